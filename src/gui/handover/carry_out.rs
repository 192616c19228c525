//! Carries out what is asked for while handing over.

use super::{Form, Given, HandoverWish, Which};
use crate::cli::Failure;
use crate::file::{RealDisk, write_export};
use crate::gui::app::App;
use crate::gui::files::Purpose;
use crate::say;
use crate::scene::Overlay;
use crate::sheets::{self, calendar_stamp, crew_list, figure_png, job_code, map_picture, svg};
use crate::work::{Clock, WallClock};
use eframe::egui;
use std::path::Path;

/// Pixels to a millimetre of a picture: 300 to an inch.
const PER_MM: f32 = 300.0 / 25.4;

impl App {
    /// What the job gives to the sheets.
    pub(in crate::gui) fn for_sheets(&self) -> Given<'_> {
        Given {
            job: self.document.job(),
            template: &self.template,
            insight: &self.insight,
            rows: &self.rows,
            polishing: self.polishing.order.as_ref(),
            shop: &self.home.preferences.shop,
        }
    }

    /// Keeps the sheet that is shown up to date, and the moment that is played.
    pub(in crate::gui) fn step_handover(&mut self, shown: bool, now: f64) {
        if !shown {
            self.handover.stop_playing();
            return;
        }
        let options = self.sheet_options();
        let mut handover = std::mem::take(&mut self.handover);
        handover.options = options;
        handover.follow(self.for_sheets());
        self.handover = handover;
        let takes = self.order.order().map_or(0, |o| o.plan.makespan_s);
        if let Some(moment) = self.handover.moment(now, takes) {
            self.view.moment = Some(moment);
        }
    }

    pub(in crate::gui) fn hand_over(&mut self, wish: HandoverWish, ctx: &egui::Context, frame: Option<&eframe::Frame>) {
        match wish {
            HandoverWish::Show(which) => self.handover.which = which,
            HandoverWish::Options(options) => self.handover.options = options,
            HandoverWish::Ask(form) => self.ask(Purpose::Sheet(form, self.handover.which), ctx, frame),
            HandoverWish::Write(form, path) => match self.write_sheet(form, &path) {
                Ok(()) => self.handover.said = Some(say!("handover-written", path = path.display().to_string())),
                Err(failure) => self.fail(failure),
            },
            HandoverWish::Play => {
                self.view.overlay = Overlay::Order;
                self.view.chosen.clear();
                self.view.current = None;
                self.view.viewport = None;
                self.handover.play(ctx.input(|i| i.time));
            }
            HandoverWish::StopPlaying => {
                self.handover.stop_playing();
                self.view.moment = None;
                self.view.viewport = None;
            }
        }
    }

    /// The map as it is shown, as SVG text.
    pub(in crate::gui) fn map_as_drawing(&self) -> String {
        svg(&map_picture(&self.for_sheets().input(self.sheet_options()), self.view.overlay))
    }

    /// The map as it is shown, in pixels.
    pub(in crate::gui) fn map_as_picture(&self) -> Result<egui::ColorImage, Failure> {
        let fault = |e: String| Failure::new(e, say!("handover-report-fault"));
        let figure = map_picture(&self.for_sheets().input(self.sheet_options()), self.view.overlay);
        let png = figure_png(&figure, PER_MM / 2.0).map_err(|e| fault(e.to_string()))?;
        let picture = image::load_from_memory(&png).map_err(|e| fault(e.to_string()))?.into_rgba8();
        let size = [picture.width() as usize, picture.height() as usize];
        Ok(egui::ColorImage::from_rgba_unmultiplied(size, picture.as_raw()))
    }

    fn sheet_options(&self) -> sheets::Options {
        sheets::Options { naming: self.view.naming, units: self.home.preferences.units(), ..self.handover.options }
    }

    pub(in crate::gui) fn write_sheet(&mut self, form: Form, path: &Path) -> Result<(), Failure> {
        let fault = |e: String| Failure::new(e, say!("handover-report-fault"));
        self.question = None;
        let options = self.sheet_options();
        let mut handover = std::mem::take(&mut self.handover);
        handover.options = options;
        handover.follow(self.for_sheets());
        let input = self.for_sheets().input(handover.options);
        let bytes = match form {
            Form::Pdf => match handover.missing() {
                [] => handover.pages().map(|pages| sheets::pdf(&pages).map_err(|e| fault(e.to_string()))).transpose(),
                missing => {
                    let places: Vec<String> = missing.iter().map(ToString::to_string).collect();
                    Err(Failure::new(
                        say!("handover-font-lacks", places = places.join("; ")),
                        say!("handover-write-in-letters"),
                    ))
                }
            }
            .map(Option::unwrap_or_default),
            Form::Html => Ok(handover.built.as_ref().map(|b| sheets::html(&b.sheet).into_bytes()).unwrap_or_default()),
            Form::List => crew_list(&input).map(String::into_bytes).map_err(|e| fault(e.to_string())),
            Form::Calendar => sheets::calendar(&input, &job_code(input.job), &calendar_stamp(WallClock.now_s()))
                .map(String::into_bytes)
                .ok_or_else(|| {
                    let hint = say!("handover-enter-day");
                    Failure::new(say!("handover-no-day"), hint)
                }),
            Form::Svg => Ok(svg(&map_picture(&input, map_of(handover.which))).into_bytes()),
            Form::Png => {
                figure_png(&map_picture(&input, map_of(handover.which)), PER_MM).map_err(|e| fault(e.to_string()))
            }
        };
        self.handover = handover;
        write_export(&RealDisk, path, &bytes?)?;
        Ok(())
    }
}

/// What the map of a sheet shows.
fn map_of(which: Which) -> Overlay {
    match which {
        Which::Customer => Overlay::Polish,
        Which::Crew => Overlay::Order,
        Which::Record => Overlay::Film,
    }
}
