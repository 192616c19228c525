//! How pressure, speed and time make removal.
//!
//! Preston's law: dh/dt = K·p·v. Taken over a whole section of surface the area of the pad cancels, whatever its path:
//! mean removal = K·F·v·t / A, with F the force on the pad, v the mean speed under it, t the time, A the worked surface.
//! **Source**: Preston 1927, as quoted in a lapping article and a laboratory report (UCRL-ID-115321); the identity over a section is
//! computed from it.
//!
//! K is fitted from a test spot. It falls as the abrasive breaks down and the pad loads (common practice), so it is not carried
//! further than about twice the tested time.

use crate::measure::thickness;
use crate::units::Micrometres;
use std::f64::consts::PI;

/// How a section is worked.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Working {
    /// Force on the pad, in newtons.
    pub force_n: f64,
    /// Mean speed of the pad over the paint, in metres per second.
    pub speed_m_s: f64,
    /// Time, in seconds.
    pub seconds: f64,
    /// Worked surface, in square metres; above zero.
    pub area_m2: f64,
}

impl Working {
    /// F·v·t/A in N/m: what K is multiplied by.
    pub fn dose(&self) -> f64 {
        self.force_n * self.speed_m_s * self.seconds / self.area_m2
    }

    /// Mean removal with coefficient `k` (1/Pa).
    pub fn removal(&self, k: f64) -> Micrometres {
        thickness(k * self.dose() * 1e6)
    }

    /// The coefficient K (1/Pa) that explains a removal; `None` when nothing was worked.
    pub fn coefficient(&self, removal: Micrometres) -> Option<f64> {
        let dose = self.dose();
        (dose.is_finite() && dose > 0.0).then(|| removal.um() * 1e-6 / dose)
    }
}

/// Mean speed under an orbital machine without net turning of the pad: π·throw·n, in m/s (computed).
pub fn orbital_speed(throw_mm: f64, orbits_per_minute: f64) -> f64 {
    PI * throw_mm / 1000.0 * orbits_per_minute / 60.0
}

/// Mean speed under a rotary machine, over the disc: (2/3)·ω·R, in m/s (computed).
pub fn rotary_speed(pad_mm: f64, turns_per_minute: f64) -> f64 {
    2.0 / 3.0 * (2.0 * PI * turns_per_minute / 60.0) * pad_mm / 2000.0
}
