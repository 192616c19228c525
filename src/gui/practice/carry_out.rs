//! Carrying out what is wished while practising, and bringing the screen up to the moment.

use super::{Laying, PracticeWish, Quiz, Stage};
use crate::file::{Attempt, Learners, ProgressError, RealDisk};
use crate::gui::app::App;
use crate::gui::order::waker;
use crate::gui::view_state::Workspace;
use crate::insight::Insight;
use crate::practice::{Done, NextRound, Setup};
use crate::say;
use crate::scene::{MapScene, Overlay, PanelState, PracticeFacts, map_scene, practice_map};
use crate::units::clock;
use crate::vehicle::Template;
use crate::work::{PracticeAnswer, PracticeAsk, PracticeRun, day_of};
use eframe::egui;
use std::sync::Arc;

impl App {
    /// The same, with learners that are kept; without this results last as long as the window.
    #[must_use]
    pub fn with_learners(mut self, learners: Learners) -> Self {
        self.practice = super::PracticeState::new(learners);
        self
    }

    /// Carries out a wish.
    pub(in crate::gui) fn practise(&mut self, wish: PracticeWish, ctx: &egui::Context) {
        let naming = self.view.naming;
        let state = &mut self.practice;
        match wish {
            PracticeWish::Learner(name) => {
                let name = name.trim().to_owned();
                if name.is_empty() {
                    (state.attempts, state.learner, state.trouble) = (Vec::new(), None, None);
                    return;
                }
                match state.learners.load(&RealDisk, &name) {
                    Ok(attempts) => {
                        if !state.names.contains(&name) {
                            state.names.push(name.clone());
                        }
                        (state.attempts, state.learner, state.trouble) = (attempts, Some(name), None);
                    }
                    Err(error) => state.trouble = Some(format!("{error}; {}", error.hint())),
                }
            }
            PracticeWish::Body(None) => state.body = None,
            PracticeWish::Body(Some(id)) => match self.bodies.load(&id) {
                Ok(template) => {
                    let mut job = (**self.document.job()).clone();
                    job.panels.clear();
                    job.vehicle = crate::job::Vehicle { template: id, ..Default::default() };
                    state.bare = Some(Insight::new(&Arc::new(job), &template));
                    state.body = Some(template);
                }
                Err(error) => state.trouble = Some(format!("{error}; {}", error.hint())),
            },
            PracticeWish::Part(part) => state.part = part,
            PracticeWish::Air(air) => state.air = air,
            PracticeWish::Start(done) => self.start_exercise(done, ctx),
            PracticeWish::Leave => {
                (state.stage, state.trouble) = (Stage::Choosing, None);
                self.view.moment = None;
            }
            PracticeWish::Hint => match &mut state.stage {
                Stage::Laying(laying) => laying.give_hint(),
                Stage::Next(quiz) => quiz.hinted = true,
                Stage::Polish(quiz) => quiz.hinted = true,
                Stage::Choosing | Stage::Making(..) => {}
            },
            PracticeWish::Answer(answer) => match &mut state.stage {
                Stage::Next(quiz) => quiz.take(answer),
                Stage::Polish(quiz) => quiz.take(answer),
                _ => {}
            },
            PracticeWish::Next => {
                let (over, score) = match &mut state.stage {
                    Stage::Next(quiz) => (quiz.go_on(), quiz.score()),
                    Stage::Polish(quiz) => (quiz.go_on(), quiz.score()),
                    _ => return,
                };
                if over {
                    self.keep(score);
                }
                self.choose_asked();
            }
            other => {
                let Stage::Laying(laying) = &mut state.stage else { return };
                if let Some(score) = carry_out(laying, &other, naming) {
                    self.keep(score);
                }
            }
        }
    }

    fn start_exercise(&mut self, done: Done, ctx: &egui::Context) {
        let state = &mut self.practice;
        let seed = 1 + state.attempts.len() as u64;
        let template = Arc::clone(state.body.as_ref().unwrap_or(&self.template));
        let ask = match done {
            Done::Lesson(lesson) => PracticeAsk::Order(Setup {
                lesson,
                part: state.part,
                air: state.air.unwrap_or_else(|| lesson.air()),
                seed,
            }),
            Done::NextPanel => PracticeAsk::NextPanel(seed, self.view.naming),
            Done::Polishing => PracticeAsk::Polishing(seed),
        };
        let base = Arc::clone(self.document.job());
        state.trouble = None;
        match PracticeRun::start(base, template, ask, self.effort, waker(ctx)) {
            Ok(run) => state.stage = Stage::Making(done, run),
            Err(error) => state.trouble = Some(say!("practice-planner-failed", why = error.to_string())),
        }
    }

    /// Keeps a result of the exercise on screen: per cent, and how much was wrong.
    fn keep(&mut self, (score_pct, broken): (u32, u32)) {
        let vehicle = self.shown_template().name.clone();
        let state = &mut self.practice;
        let date = day_of(self.bay.clock.now_s());
        let (Some(done), Some(date)) = (state.doing(), date) else { return };
        let attempt = Attempt { date, exercise: done.written().to_owned(), vehicle, score_pct, broken };
        if let Some(learner) = &state.learner {
            match state.learners.add(&RealDisk, learner, &attempt) {
                Ok(_) => {}
                Err(ProgressError::NoFolder) => {
                    state.trouble = Some(say!("practice-not-kept-longer").to_owned());
                }
                Err(error) => {
                    let why = format!("{error}; {}", error.hint());
                    state.trouble = Some(say!("practice-not-kept", why = why));
                }
            }
        }
        state.attempts.push(attempt);
    }

    /// Takes in what the thread brings, plays on, and works out what the map shows.
    pub(in crate::gui) fn step_practice(&mut self, ctx: &egui::Context) {
        self.take_exercise();
        if self.view.workspace != Workspace::Practice || self.editing.is_some() {
            return;
        }
        if let Stage::Laying(laying) = &mut self.practice.stage {
            let passed = ctx.input(|i| i.stable_dt).min(0.25);
            if laying.step(passed) {
                ctx.request_repaint();
            }
            self.view.moment = laying.moment_s();
        }
        let map = self.practice_scene();
        self.practice.map = match self.practice.map.take() {
            Some(old) if *old == map => Some(old),
            _ => Some(Arc::new(map)),
        };
    }

    fn take_exercise(&mut self) {
        let Stage::Making(_, run) = &self.practice.stage else { return };
        let Some(answer) = run.answer() else { return };
        let before = Arc::clone(self.shown_template());
        self.practice.stage = match answer {
            PracticeAnswer::Order(exercise) => Stage::Laying(Box::new(Laying::new(*exercise))),
            PracticeAnswer::NextPanel(rounds) => Stage::Next(Quiz::new(rounds)),
            PracticeAnswer::Polishing(rounds) => Stage::Polish(Quiz::new(rounds)),
            PracticeAnswer::None(why) => {
                self.practice.trouble = Some(format!("{}.", crate::units::capital(&why)));
                Stage::Choosing
            }
        };
        self.follow_vehicle(&before);
        self.choose_asked();
    }

    /// Nothing is chosen but the panel that is asked about.
    fn choose_asked(&mut self) {
        let panel = match &self.practice.stage {
            Stage::Polish(quiz) => quiz.now().map(|r| r.template.panels[r.panel].id.clone()),
            _ => None,
        };
        self.view.chosen = panel.iter().cloned().collect();
        self.view.current = panel;
    }

    /// The vehicle on screen.
    pub(in crate::gui) fn shown_template(&self) -> &Arc<Template> {
        let practised = self.practice.template().filter(|_| self.view.workspace == Workspace::Practice);
        practised.filter(|_| self.editing.is_none()).unwrap_or(&self.template)
    }

    /// Where another vehicle is on screen than before, the map shows all of it, and nothing is chosen that it has not.
    pub(in crate::gui) fn follow_vehicle(&mut self, before: &Arc<Template>) {
        let now = Arc::clone(self.shown_template());
        if Arc::ptr_eq(before, &now) {
            return;
        }
        if !now.is_drawn_like(before) {
            self.view.viewport = None;
        }
        self.view.chosen.retain(|id| now.panel(id).is_some());
        self.view.current = self.view.current.take().filter(|id| now.panel(id).is_some());
    }

    fn practice_scene(&self) -> MapScene {
        let template = self.shown_template();
        match &self.practice.stage {
            Stage::Laying(laying) => laying.map(),
            Stage::Next(quiz) => match quiz.now().or(quiz.rounds.last()) {
                Some(round) => next_map(round),
                None => self.bare(template),
            },
            Stage::Polish(quiz) => match quiz.now() {
                Some(round) => map_scene(&round.job, template, &round.whole, Overlay::Film, &[]),
                None => self.bare(template),
            },
            Stage::Choosing | Stage::Making(..) => self.bare(template),
        }
    }

    /// A vehicle with nothing on it.
    fn bare(&self, template: &Arc<Template>) -> MapScene {
        practice_map(&PracticeFacts {
            job: self.document.job(),
            template,
            insight: self.practice.insight().unwrap_or(&self.insight),
            states: &vec![PanelState::ToDo; template.panels.len()],
            rows: &[],
            here: &[],
            choices: &[],
        })
    }

    /// Whether an exercise is being made.
    pub fn is_making_exercise(&self) -> bool {
        matches!(self.practice.stage, Stage::Making(..))
    }
}

fn carry_out(laying: &mut Laying, wish: &PracticeWish, naming: crate::vehicle::Naming) -> Option<(u32, u32)> {
    match wish {
        PracticeWish::Lay(panel) => laying.lay(panel),
        PracticeWish::Hold(seconds) => laying.hold_s = (*seconds).max(0),
        PracticeWish::HoldForOther => laying.hold_for_other(),
        PracticeWish::TakeBack => laying.take_back(),
        PracticeWish::Check => return laying.check(naming).map(|s| (s.percent(), s.broken as u32)),
        PracticeWish::Change => laying.change(),
        PracticeWish::ShowBest => laying.show_best(),
        PracticeWish::Play(on) => {
            if *on && laying.moment.is_none_or(|m| m >= laying.played.end_s() as f32) {
                laying.moment = Some(0.0);
            }
            laying.playing = *on;
        }
        PracticeWish::Speed(speed) => laying.speed = *speed,
        PracticeWish::Moment(at) => {
            laying.moment = Some((*at).clamp(0, laying.played.end_s()) as f32);
            laying.playing = false;
        }
        PracticeWish::Mark(mark) => {
            laying.mark = *mark;
            let at = mark.and_then(|k| laying.judged.as_ref()?.marks.get(k).map(|m| m.at_s));
            if let Some(at) = at {
                (laying.moment, laying.playing) = (Some(at as f32), false);
            }
        }
        _ => {}
    }
    None
}

fn next_map(round: &NextRound) -> MapScene {
    let exercise = &round.exercise;
    let wet = |p: usize| round.wet.iter().find(|(w, _)| *w == p).map(|(_, left)| *left);
    let state = |p: usize| match wet(p) {
        _ if round.done.contains(&p) => PanelState::Done,
        Some(left) => PanelState::Wet(say!("practice-time-left", time = clock(left))),
        None if exercise.is_coated(p) => PanelState::ToDo,
        None => PanelState::Out,
    };
    let choices: Vec<(usize, char)> = round.candidates.iter().map(|c| c.panel).zip('A'..='Z').collect();
    practice_map(&PracticeFacts {
        job: &exercise.job,
        template: &exercise.template,
        insight: &exercise.insight,
        states: &(0..exercise.template.panels.len()).map(state).collect::<Vec<_>>(),
        rows: &[],
        here: &round.others,
        choices: &choices,
    })
}
