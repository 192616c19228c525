//! Surveys in a job: checks of the gauge, readings that can't be taken, before and after, the ledger, what is suggested.
#![expect(clippy::expect_used, reason = "helpers of tests; clippy only sees test functions as tests")]

mod support;

use lapwright::file::{Loaded, job_findings, job_from_text, job_to_text};
use lapwright::finding::Code;
use lapwright::insight::{Insight, PanelInsight, earlier_visits, mirror_of, next_visit};
use lapwright::job::{Command, CommandError, Document, Survey, SurveyChange, SurveyStage};
use lapwright::measure::{Assurance, FilmBands, GaugeCheck, GaugePrinciple, GlossGeometry, Visibility};
use lapwright::polish::{DefectKind, LedgerEntry, RemovalPolicy, RemovalSource};
use lapwright::units::{GlossUnits, Micrometres};
use lapwright::vehicle::PanelId;
use std::sync::Arc;
use support::job::job_on;
use support::{index_of, sample};

const BONNET: &str = "bonnet-left";

fn um(value: f64) -> Micrometres {
    Micrometres::new(value).expect("a thickness")
}

/// A document on a vehicle, so that it knows what lies under the paint.
struct Shop {
    document: Document,
    loaded: Loaded,
}

impl Shop {
    fn new(loaded: Loaded) -> Self {
        let mut document = Document::opened(Arc::clone(&loaded.job));
        document.set_template(Arc::clone(&loaded.template));
        Self { document, loaded }
    }

    fn empty() -> Self {
        Self::new(job_on("hatch").build())
    }

    fn run(&mut self, command: Command) -> Result<(), CommandError> {
        self.document.apply(&command, None).map(drop)
    }

    fn survey(&mut self, change: SurveyChange) {
        self.run(Command::Survey(change)).expect("it fits");
    }

    fn check(&mut self, certified: f64, shown: f64) {
        self.survey(SurveyChange::AddCheck(GaugeCheck { certified_um: um(certified), shown_um: um(shown) }));
    }

    /// Three readings at each of some spots of a panel, new ones where it has none there yet.
    fn read(&mut self, panel: &str, films: &[f64]) {
        let id = PanelId::from(panel);
        let centre = self.loaded.template.panels[index_of(&self.loaded.template, panel)].label.centre;
        for (spot, film) in films.iter().enumerate() {
            let known = self.document.job().record(&id).map_or(0, |r| r.spots.len());
            let at = centre + lapwright::geometry::MapVector::new(spot as f32 * 30.0, 0.0);
            for reading in 0..3 {
                let thickness = um(*film);
                let command = if spot >= known && reading == 0 {
                    Command::AddSpot { panel: id.clone(), at, thickness }
                } else {
                    Command::AddReading { panel: id.clone(), spot, thickness }
                };
                self.run(command).expect("the gauge can read it");
            }
        }
    }

    fn insight(&self) -> Insight {
        Insight::new(self.document.job(), &self.loaded.template)
    }

    fn panel(&self, panel: &str) -> PanelInsight {
        self.insight().panels[index_of(&self.loaded.template, panel)].clone()
    }

    fn codes(&self, panel: &str) -> Vec<Code> {
        let index = index_of(&self.loaded.template, panel);
        self.insight().points.panels[index].iter().map(|f| f.code).collect()
    }

    fn begin(&mut self, stage: SurveyStage) -> Result<(), CommandError> {
        self.run(Command::Survey(SurveyChange::Begin(Survey { stage, ..Survey::default() })))
    }
}

const FILMS: [f64; 5] = [118.0, 119.0, 117.0, 120.0, 118.0];

#[test]
fn readings_are_numbered_in_the_order_they_are_taken() {
    let mut shop = Shop::empty();
    shop.read(BONNET, &FILMS);
    shop.read("roof-left", &FILMS[..2]);
    let job = shop.document.job();
    let numbers = |panel: &str| -> Vec<u32> {
        let record = job.record(&PanelId::from(panel)).expect("read");
        record.spots.iter().flat_map(|s| &s.readings).map(|r| r.number).collect()
    };
    assert_eq!(numbers(BONNET), (1..=15).collect::<Vec<_>>());
    assert_eq!(numbers("roof-left"), (16..=21).collect::<Vec<_>>());
}

/// ASTM D7091 (from memory): readings since the last good check are suspect when one fails.
#[test]
fn a_failed_end_check_leaves_the_readings_and_takes_the_budget_away() {
    let mut shop = Shop::empty();
    shop.check(0.0, 0.0);
    shop.check(126.3, 126.0);
    shop.read(BONNET, &FILMS);
    shop.check(126.3, 127.0);
    let good = shop.panel(BONNET);
    assert!(good.budget.allowed > Micrometres::ZERO, "{:?}", good.budget);
    shop.read("roof-left", &FILMS);
    shop.check(126.3, 133.0); // ±(1 + 1 %) of 126.3 is ±2.3, plus half a step
    assert_eq!(shop.panel(BONNET).budget, good.budget, "what was read before the last good check counts");
    let roof = shop.panel("roof-left");
    assert_eq!(roof.film, None);
    assert_eq!(roof.budget.allowed, Micrometres::ZERO);
    assert!(roof.budget.refused.as_ref().is_some_and(|r| r.contains("failed its check")), "{:?}", roof.budget);
    let read = roof.read.expect("the readings are still there");
    assert_eq!((read.suspects, read.not_counting.expect("shown").n), (15, 15));
    assert!(shop.codes("roof-left").contains(&Code::ReadingsSuspect));
    let gauge: Vec<Code> = shop.insight().points.gauge.iter().map(|f| f.code).collect();
    assert_eq!(gauge, [Code::GaugeCheckFailed]);
    // Adjusted, checked on that shim and read again: those count, the others stay where they are.
    shop.check(126.3, 126.5);
    shop.read("roof-left", &FILMS);
    let again = shop.panel("roof-left");
    let film = again.film.expect("the new readings count");
    assert_eq!((film.n, again.read.expect("read").suspects), (15, 15));
    assert!(again.budget.allowed > Micrometres::ZERO);
    // Noted by mistake after all: taken away, everything counts again.
    shop.survey(SurveyChange::RemoveCheck { survey: 0, check: 3 });
    assert_eq!(shop.panel("roof-left").film.expect("read").n, 30);
}

/// Suspect readings never raise what may go, and thin ones lower the bound.
#[test]
fn suspect_readings_only_ever_make_the_work_more_careful() {
    for suspect in [80.0, 100.0, 118.0, 160.0, 400.0] {
        let mut shop = Shop::empty();
        shop.read(BONNET, &[suspect; 5]);
        shop.check(126.3, 140.0);
        shop.check(126.3, 126.3);
        shop.read(BONNET, &FILMS);
        let mixed = shop.panel(BONNET);
        let mut alone = Shop::empty();
        alone.read(BONNET, &FILMS);
        let alone = alone.panel(BONNET);
        let lower = |panel: &PanelInsight| panel.film.as_ref().expect("read").lower;
        assert!(lower(&mixed) <= lower(&alone), "{suspect}");
        assert!(mixed.budget.allowed <= alone.budget.allowed, "{suspect}");
        assert_eq!(mixed.film.as_ref().expect("read").mean.to_bits(), alone.film.expect("read").mean.to_bits());
    }
}

#[test]
fn readings_whose_order_nobody_knows_are_suspect_as_soon_as_any_are() {
    let loaded = job_on("hatch").film(BONNET, 118.0).build(); // written without numbers
    let mut shop = Shop::new(loaded);
    assert!(shop.panel(BONNET).film.is_some());
    shop.check(126.3, 150.0);
    assert_eq!(shop.panel(BONNET).film, None);
}

#[test]
fn a_reading_that_the_gauge_can_not_take_is_refused_with_the_reason() {
    let mut shop = Shop::empty();
    let panel = PanelId::from("bumper-front-left");
    let at = shop.loaded.template.panels[index_of(&shop.loaded.template, "bumper-front-left")].label.centre;
    let add = Command::AddSpot { panel: panel.clone(), at, thickness: um(110.0) };
    let error = shop.run(add.clone()).expect_err("a magnetic gauge can't read plastic");
    assert!(matches!(error, CommandError::CantRead { .. }), "{error}");
    assert!(error.to_string().contains("ultrasonic"), "{error}");
    assert!(shop.document.job().record(&panel).is_none(), "nothing was noted");
    let mut gauge = shop.document.job().gauge.clone();
    gauge.principle = GaugePrinciple::Ultrasonic;
    shop.run(Command::SetGauge(gauge.clone())).expect("another gauge");
    shop.run(add).expect("it reads plastic");
    assert!(shop.panel("bumper-front-left").film.is_some());
    // Changed to a gauge that can't have taken it: it stays, it doesn't count, and that is said.
    gauge.principle = GaugePrinciple::MagneticAndEddyCurrent;
    shop.run(Command::SetGauge(gauge)).expect("another gauge");
    assert_eq!(shop.panel("bumper-front-left").film, None);
    assert_eq!(shop.codes("bumper-front-left"), [Code::ReadingsImpossible]);
}

#[test]
fn a_second_survey_at_the_same_spots_gives_the_change_and_what_may_still_go() {
    let mut shop = Shop::new(job_on("hatch").defect(BONNET, DefectKind::Swirl).build());
    shop.read(BONNET, &FILMS);
    let planned = shop.panel(BONNET);
    assert!(planned.after.is_none());
    shop.begin(SurveyStage::After).expect("the first survey has readings");
    shop.read(BONNET, &FILMS.map(|film| film - 2.0));
    let panel = shop.panel(BONNET);
    assert_eq!(
        (&panel.film, &panel.polish),
        (&planned.film, &planned.polish),
        "the plan rests on what it was made from"
    );
    let after = panel.after.clone().expect("read after polishing");
    let removal = after.removal.as_ref().expect("five spots read twice");
    assert_eq!((removal.change.n, removal.visibility), (5, Visibility::Shown));
    assert!((removal.change.mean - 2.0).abs() < 1e-9);
    assert!(after.went.measured && after.went.upper >= um(2.0));
    assert!(after.left <= planned.budget.allowed.saturating_sub(after.went.upper));
    assert!(panel.cautions().any(|c| c.contains("polished in this visit already")));
    // Nothing in the record of the first survey has changed.
    let record = shop.document.job().record(&PanelId::from(BONNET)).expect("read");
    assert!(record.spots.iter().all(|s| s.count_in(0) == 3 && s.count_in(1) == 3));
    assert!(shop.begin(SurveyStage::Before).is_err(), "after polishing nobody can read it as it was");
}

/// A gauge of 1 µm steps can't show half a micrometre; then the plan's bound counts, not the mean of the noise.
#[test]
fn what_the_gauge_can_not_show_counts_as_planned() {
    let mut shop = Shop::new(job_on("hatch").defect(BONNET, DefectKind::Swirl).build());
    shop.read(BONNET, &FILMS[..3]);
    let planned = shop.panel(BONNET).removal_upper();
    shop.begin(SurveyStage::After).expect("the first survey has readings");
    shop.read(BONNET, &[118.0, 118.0, 117.0]);
    let after = shop.panel(BONNET).after.expect("read after polishing");
    assert_ne!(after.removal.as_ref().expect("three spots").visibility, Visibility::Shown);
    assert!(!after.went.measured);
    assert!(after.went.upper >= planned);
}

#[test]
fn more_than_planned_is_said() {
    let mut shop = Shop::new(job_on("hatch").defect(BONNET, DefectKind::Hologram).build());
    shop.read(BONNET, &FILMS);
    let planned = shop.panel(BONNET).removal_upper();
    shop.begin(SurveyStage::After).expect("the first survey has readings");
    shop.read(BONNET, &FILMS.map(|film| film - planned.um().ceil() - 3.0));
    assert!(shop.codes(BONNET).contains(&Code::RemovedOverPlan));
    assert_eq!(shop.panel(BONNET).after.expect("read").left, Micrometres::ZERO);
}

#[test]
fn the_change_over_the_vehicle_counts_panels() {
    let mut shop = Shop::empty();
    for panel in [BONNET, "bonnet-right", "roof-left"] {
        shop.read(panel, &FILMS);
    }
    shop.begin(SurveyStage::After).expect("read");
    assert!(shop.insight().removal.is_none());
    for (panel, gone) in [(BONNET, 2.0), ("bonnet-right", 3.0), ("roof-left", 2.0)] {
        shop.read(panel, &FILMS.map(|film| film - gone));
    }
    let change = shop.insight().removal.expect("three panels").change;
    assert_eq!(change.n, 3);
    assert!((change.mean - 7.0 / 3.0).abs() < 1e-9);
}

#[test]
fn a_survey_begins_only_after_the_last_one_has_readings_and_goes_only_while_it_has_none() {
    let mut shop = Shop::empty();
    assert!(shop.begin(SurveyStage::After).is_err());
    shop.read(BONNET, &FILMS);
    assert!(shop.run(Command::Survey(SurveyChange::Drop)).is_err(), "the first stays");
    shop.begin(SurveyStage::Before).expect("read");
    assert_eq!(shop.document.job().current_survey(), 1);
    shop.survey(SurveyChange::Drop);
    shop.begin(SurveyStage::After).expect("read");
    shop.read(BONNET, &FILMS[..1]);
    assert!(shop.run(Command::Survey(SurveyChange::Drop)).is_err(), "nothing is thrown away unseen");
}

/// Reading the vehicle anew before polishing replaces what counts, panel by panel.
#[test]
fn the_latest_readings_before_polishing_count() {
    let mut shop = Shop::empty();
    shop.read(BONNET, &FILMS);
    shop.read("roof-left", &FILMS);
    shop.begin(SurveyStage::Before).expect("read");
    shop.read(BONNET, &[110.0, 111.0, 112.0]);
    let film = shop.panel(BONNET).film.expect("read twice");
    assert_eq!((film.n, film.mean.round() as i32), (9, 111));
    assert_eq!(shop.panel("roof-left").film.expect("read once").n, 15);
}

#[test]
fn the_ledger_lowers_the_budget_and_goes_with_the_vehicle_to_its_next_visit() {
    let mut shop = Shop::new(job_on("hatch").film(BONNET, 118.0).defect(BONNET, DefectKind::Swirl).build());
    let before = shop.panel(BONNET);
    let entry =
        LedgerEntry { visit: "spring".to_owned(), removed_um: um(1.5), upper_um: um(2.5), source: RemovalSource::Told };
    let reversed = LedgerEntry { removed_um: um(3.0), ..entry.clone() };
    let panels = vec![PanelId::from(BONNET), PanelId::from("roof-left")];
    let wrong = Command::Survey(SurveyChange::AddRemoval(panels.clone(), reversed));
    assert!(shop.run(wrong).expect_err("the most is the least").to_string().contains("most that may have gone"));
    shop.survey(SurveyChange::AddRemoval(panels, entry));
    let after = shop.panel(BONNET);
    let lifetime = |panel: &PanelInsight| {
        panel.budget.limits.iter().find(|l| l.what.contains("in the life of the paint")).expect("a limit").um.um()
    };
    assert!((lifetime(&before) - lifetime(&after) - 2.5).abs() < 1e-9, "the most that may have gone counts");
    let job = shop.document.job();
    let next = next_visit(job, &shop.loaded.template, &shop.insight(), "summer");
    let record = next.record(&PanelId::from(BONNET)).expect("its ledger stays");
    assert!(record.spots.is_empty() && record.defects.is_empty());
    let visits: Vec<(&str, RemovalSource)> =
        record.removals.entries.iter().map(|e| (e.visit.as_str(), e.source)).collect();
    assert_eq!(visits, [("spring", RemovalSource::Told), ("summer", RemovalSource::Planned)]);
    assert_eq!(record.removals.entries[1].upper_um, after.removal_upper());
    assert!((record.removals.removed().um() - 2.5 - after.removal_upper().um()).abs() < 1e-9);
    let all = earlier_visits(&next);
    assert_eq!((all[0].visit.as_str(), all[0].panels), ("spring", 2));
    let text = job_to_text(&next).expect("it can be saved");
    assert_eq!(*job_from_text("next", &text).expect("and opened").job, next);
}

#[test]
fn a_measured_removal_goes_into_the_ledger_as_measured() {
    let mut shop = Shop::empty();
    shop.read(BONNET, &FILMS);
    shop.begin(SurveyStage::After).expect("read");
    shop.read(BONNET, &FILMS.map(|film| film - 2.0));
    let next = next_visit(shop.document.job(), &shop.loaded.template, &shop.insight(), "summer");
    let entry = &next.record(&PanelId::from(BONNET)).expect("a ledger").removals.entries[0];
    assert_eq!((entry.removed_um, entry.source), (um(2.0), RemovalSource::Measured));
    assert!(entry.upper_um >= entry.removed_um);
}

#[test]
fn gloss_belongs_to_the_survey_it_was_read_in() {
    let mut shop = Shop::empty();
    shop.read(BONNET, &FILMS);
    let gloss = |gu: f64| SurveyChange::AddGloss {
        panel: PanelId::from(BONNET),
        geometry: GlossGeometry::Deg20,
        gloss: GlossUnits::new(gu).expect("a gloss"),
    };
    shop.survey(gloss(78.0));
    shop.begin(SurveyStage::After).expect("read");
    shop.survey(gloss(84.0));
    let record = Arc::clone(shop.document.job().record(&PanelId::from(BONNET)).expect("read"));
    assert_eq!(record.gloss.iter().map(|g| g.survey).collect::<Vec<_>>(), [0, 1]);
    shop.survey(SurveyChange::RemoveGloss { panel: PanelId::from(BONNET), reading: 0 });
    assert!(shop.run(Command::Survey(SurveyChange::RemoveGloss { panel: PanelId::from(BONNET), reading: 4 })).is_err());
}

#[test]
fn more_assurance_never_raises_the_bound() {
    let mut shop = Shop::empty();
    shop.read(BONNET, &FILMS);
    let mut last = f64::INFINITY;
    for level in [0.75, 0.9, 0.95, 0.99] {
        let assurance = Assurance { coverage: level, confidence: level };
        shop.run(Command::SetAssurance(assurance)).expect("in range");
        let lower = shop.panel(BONNET).film.expect("read").lower.um();
        assert!(lower < last, "{level}");
        last = lower;
    }
    let too_little = Assurance { coverage: 0.5, confidence: 0.9 };
    assert!(shop.run(Command::SetAssurance(too_little)).is_err());
}

#[test]
fn borders_out_of_order_are_refused() {
    let mut shop = Shop::empty();
    let bands = FilmBands { thin_below_um: um(60.0), ..FilmBands::default() };
    let policy = RemovalPolicy { bands, ..RemovalPolicy::default() };
    let error = shop.run(Command::SetPolicy(Box::new(policy))).expect_err("thin below too thin to cut");
    assert!(error.to_string().contains("do not rise"), "{error}");
}

/// The sample was made so that there is something to find: a resprayed door, thicker than the one on the other side.
#[test]
fn what_the_sample_suggests_is_found_on_the_panels_it_was_put_on() {
    let loaded = sample();
    let insight = Insight::new(&loaded.job, &loaded.template);
    let codes = |panel: &str| -> Vec<Code> {
        insight.points.panels[index_of(&loaded.template, panel)].iter().map(|f| f.code).collect()
    };
    let door = codes("door-front-right");
    assert!(door.contains(&Code::FilmRefinished) && door.contains(&Code::FilmMirror), "{door:?}");
    assert!(codes("door-front-left").contains(&Code::FilmMirror));
    assert_eq!(codes("bonnet-left"), []);
    assert_eq!(insight.points.gauge, [], "its checks are good");
}

#[test]
fn chalking_paint_may_have_no_clear() {
    let shop = Shop::new(job_on("hatch").defect(BONNET, DefectKind::Oxidation).build());
    assert_eq!(shop.codes(BONNET), [Code::FilmSingleStage]);
}

#[test]
fn mirror_panels_are_each_others() {
    for template in support::templates() {
        for index in 0..template.panels.len() {
            if let Some(other) = mirror_of(&template, index) {
                assert_eq!(mirror_of(&template, other), Some(index));
                assert!((template.panels[index].area.m2() - template.panels[other].area.m2()).abs() < 1e-9);
            }
        }
    }
}

#[test]
fn faults_of_surveys_in_a_file_are_found_with_their_place() {
    let text = job_to_text(&sample().job).expect("it can be written");
    for (from, to, code, place) in [
        (
            "thickness_um: 119.0",
            "thickness_um: 119.0, survey: 3",
            Code::JobSurvey,
            "panels[bonnet-left].spots[0].readings[0].survey",
        ),
        ("upper_um: 0.7", "upper_um: 0.3", Code::JobRemoval, "panels[boot-lid-left].removals[0].upper_um"),
        ("gloss_gu: 89.5", "gloss_gu: 89.5, survey: 1", Code::JobSurvey, "panels[bonnet-left].gloss[0].survey"),
        ("thin_below_um: 100.0", "thin_below_um: 10.0", Code::JobBands, "policy.bands"),
    ] {
        let start = text.find(from).unwrap_or_else(|| panic!("{from} stands in the sample"));
        let changed = format!("{}{to}{}", &text[..start], &text[start + from.len()..]);
        let (_, _, found) = job_findings("changed", &changed).expect("it can be read");
        assert!(found.iter().any(|f| f.code == code && f.place == place), "{from}: {found:?}");
    }
}

/// A job written before there were surveys is one survey whose order nobody knows.
#[test]
fn an_older_job_has_one_survey() {
    let job = job_on("hatch").film(BONNET, 118.0).build().job;
    let text = job_to_text(&job).expect("it can be written");
    assert!(!text.contains("survey") && !text.contains("number:") && !text.contains("removals"), "{text}");
    assert_eq!(job.surveys, [Survey::default()]);
}
