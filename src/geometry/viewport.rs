//! How the map lies on the screen: pan, zoom and which way the front points.

use super::space::{MapPoint, MapRect, ScreenPoint, ScreenRect, ScreenVector};

/// Which way the front of the vehicle points on the screen.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, serde::Serialize, serde::Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Orientation {
    /// Front at the left; the vehicle's left side is below.
    #[default]
    FrontLeft,
    /// Front at the top; the vehicle's left side is at the left.
    FrontUp,
}

/// A view of the map: `screen = turn(map) * scale + offset`, held so that the map can't be lost.
///
/// The scale stays between half and sixty times that of [`Viewport::fit`], and at least a quarter of the smaller of map and
/// screen stays in view along each axis.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Viewport {
    orientation: Orientation,
    map: MapRect,
    screen: ScreenRect,
    margin: f32,
    scale: f32,
    offset: ScreenVector,
}

impl Viewport {
    /// The whole of `map` in the middle of `screen` with `margin` points of air around it.
    ///
    /// **Domain**: an empty map or screen is taken as one unit wide.
    pub fn fit(map: MapRect, screen: ScreenRect, margin: f32, orientation: Orientation) -> Self {
        let mut view = Self { orientation, map, screen, margin, scale: 1.0, offset: ScreenVector::zero() };
        view.scale = view.fit_scale();
        view.centre_on(map.center());
        view
    }

    /// Shows `part` of the map as large as it goes; the limits stay those of the whole map.
    pub fn fit_part(&mut self, part: MapRect) {
        let view = Self::fit(part, self.screen, self.margin, self.orientation);
        self.set_scale(view.scale);
        self.centre_on(part.center());
    }

    /// Points of the screen per mm of the map.
    pub fn scale(&self) -> f32 {
        self.scale
    }

    /// Which way the front points.
    pub fn orientation(&self) -> Orientation {
        self.orientation
    }

    /// The part of the screen the map lies on.
    pub fn screen(&self) -> ScreenRect {
        self.screen
    }

    /// Turns the map and fits it anew.
    pub fn turn(&mut self, orientation: Orientation) {
        *self = Self::fit(self.map, self.screen, self.margin, orientation);
    }

    /// Takes a new place on the screen, keeping what is in the middle there and the zoom relative to the fit.
    pub fn resize(&mut self, screen: ScreenRect) {
        let middle = self.to_map(self.screen.center());
        let zoom = self.scale / self.fit_scale();
        self.screen = screen;
        self.scale = self.fit_scale() * zoom;
        self.centre_on(middle);
    }

    /// Zooms by `factor`; the place of the map under `at` stays under it, as far as the limits allow.
    pub fn zoom_at(&mut self, at: ScreenPoint, factor: f32) {
        if !(factor.is_finite() && factor > 0.0) {
            return;
        }
        let under = self.to_map(at);
        self.set_scale(self.scale * factor);
        self.offset += at - self.to_screen(under);
        self.hold();
    }

    /// Moves the map by a way on the screen.
    pub fn pan(&mut self, by: ScreenVector) {
        if by.x.is_finite() && by.y.is_finite() {
            self.offset += by;
            self.hold();
        }
    }

    /// Where a place of the map is on the screen.
    pub fn to_screen(&self, p: MapPoint) -> ScreenPoint {
        let turned = match self.orientation {
            Orientation::FrontLeft => ScreenPoint::new(p.x, p.y),
            Orientation::FrontUp => ScreenPoint::new(-p.y, p.x),
        };
        turned * self.scale + self.offset
    }

    /// Which place of the map is at a point of the screen.
    pub fn to_map(&self, p: ScreenPoint) -> MapPoint {
        let turned = (p - self.offset) / self.scale;
        match self.orientation {
            Orientation::FrontLeft => MapPoint::new(turned.x, turned.y),
            Orientation::FrontUp => MapPoint::new(turned.y, -turned.x),
        }
    }

    /// The box on the screen round a box of the map.
    pub fn rect_to_screen(&self, rect: MapRect) -> ScreenRect {
        ScreenRect::from_points([self.to_screen(rect.min), self.to_screen(rect.max)])
    }

    /// The part of the map that is in view.
    pub fn visible(&self) -> MapRect {
        MapRect::from_points([self.to_map(self.screen.min), self.to_map(self.screen.max)])
    }

    fn fit_scale(&self) -> f32 {
        let (mut w, mut h) = (self.map.width(), self.map.height());
        if self.orientation == Orientation::FrontUp {
            std::mem::swap(&mut w, &mut h);
        }
        let room = |side: f32| (side - 2.0 * self.margin).max(side * 0.1).max(1.0);
        let x = room(self.screen.width()) / w.max(1.0);
        let y = room(self.screen.height()) / h.max(1.0);
        x.min(y)
    }

    fn set_scale(&mut self, scale: f32) {
        let fit = self.fit_scale();
        self.scale = scale.clamp(fit * 0.5, fit * 60.0);
    }

    fn centre_on(&mut self, p: MapPoint) {
        self.offset += self.screen.center() - self.to_screen(p);
        self.hold();
    }

    /// Brings the map back into view.
    fn hold(&mut self) {
        let shown = self.rect_to_screen(self.map);
        let s = self.screen;
        self.offset.x += pull_back(shown.min.x, shown.max.x, s.min.x, s.max.x);
        self.offset.y += pull_back(shown.min.y, shown.max.y, s.min.y, s.max.y);
    }
}

/// How far a stretch must move so that enough of it lies in the frame.
fn pull_back(low: f32, high: f32, frame_low: f32, frame_high: f32) -> f32 {
    let keep = 0.25 * (high - low).min(frame_high - frame_low);
    if high < frame_low + keep {
        frame_low + keep - high
    } else if low > frame_high - keep {
        frame_high - keep - low
    } else {
        0.0
    }
}
