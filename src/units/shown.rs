//! The units that a reader wants to see. Jobs, files and calculations keep micrometres, degrees Celsius and millilitres; only what
//! is shown and what is typed goes through here.
//!
//! Sentences that the core writes carry their unit behind each figure; [`ShownUnits::say`] turns those figures over. **Limits**: a
//! figure without a unit keeps its value, unless it is joined to one that has a unit by a word such as "to" or "and".

use super::{Micrometres, ThicknessUnit, UM_PER_MIL, number};
use crate::words::{decimal, decimal_sign, shortest};
use serde::{Deserialize, Serialize};
use std::borrow::Cow;

/// Millilitres in a fluid ounce of the United States: 1/128 of a gallon of 231 cubic inches (**source**: NIST Handbook 44,
/// appendix C; the inch is 25.4 mm exactly).
pub const ML_PER_FL_OZ: f64 = 29.573_529_562_5;

/// How temperatures are shown.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum TemperatureUnit {
    /// Degrees Celsius.
    #[default]
    Celsius,
    /// Degrees Fahrenheit.
    Fahrenheit,
}

/// How amounts of liquid are shown.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum VolumeUnit {
    /// Millilitres.
    #[default]
    Ml,
    /// Fluid ounces of the United States.
    FlOz,
}

/// The units of everything that is shown.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub struct ShownUnits {
    /// Film, removals, depths.
    pub film: ThicknessUnit,
    /// Air and panels.
    pub temperature: TemperatureUnit,
    /// Coating, polish, wash water.
    pub volume: VolumeUnit,
}

/// From the unit that is kept to the one that is shown: `shown = kept * factor + offset`.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Conversion {
    /// The unit as it stands after a number.
    pub name: &'static str,
    factor: f64,
    offset: f64,
    more_decimals: usize,
}

impl Conversion {
    /// A kept value as it is shown.
    pub fn shown(&self, kept: f64) -> f64 {
        kept * self.factor + self.offset
    }

    /// A shown value as it is kept.
    pub fn kept(&self, shown: f64) -> f64 {
        (shown - self.offset) / self.factor
    }

    /// A number typed in the shown unit as it is kept, to a ten-thousandth of the kept unit.
    pub fn typed(&self, shown: f64) -> f64 {
        (self.kept(shown) * 1e4).round() / 1e4
    }

    /// Decimals of the shown value where the kept one has so many.
    pub fn decimals(&self, kept: usize) -> usize {
        kept + self.more_decimals
    }

    /// A step of the kept value as one of the shown value, to whole steps where it was at least a half.
    pub fn step(&self, kept: f64) -> f64 {
        let step = kept * self.factor;
        if step > 0.75 { step.round() } else { step }
    }

    /// A kept value as a number without its unit.
    pub fn number(&self, kept: f64, decimals: usize) -> String {
        let places = self.decimals(decimals);
        decimal(self.shown(kept), places)
    }

    /// Every figure of a text that has no units in it, such as a label on the map.
    pub fn figures(&self, text: &str) -> String {
        let mut said = String::new();
        let mut rest = text;
        while let Some(at) = rest.find(|c: char| c.is_ascii_digit()) {
            let end = rest[at..].find(|c: char| !is_figure(c)).map_or(rest.len(), |e| at + e);
            // A sign at the end is one of the sentence.
            let end = at + rest[at..end].trim_end_matches(decimal_sign()).len();
            let from = with_sign(rest, at);
            said.push_str(&rest[..from]);
            said.push_str(&self.figure(&rest[from..end]));
            rest = &rest[end..];
        }
        said.push_str(rest);
        said
    }

    fn figure(&self, text: &str) -> String {
        let decimals = text.split_once(decimal_sign()).map_or(0, |(_, after)| after.len());
        number(&text.replace('\u{2212}', "-")).map_or_else(|| text.to_owned(), |kept| self.number(kept, decimals))
    }
}

impl ShownUnits {
    /// How values of a kept unit are shown, where that is another one; "K" stands for differences of temperatures.
    pub fn conversion(self, kept: &str) -> Option<Conversion> {
        let to = |name, factor, offset, more_decimals| Some(Conversion { name, factor, offset, more_decimals });
        match kept {
            "µm" if self.film == ThicknessUnit::Mil => to("mil", 1.0 / UM_PER_MIL, 0.0, 1),
            "°C" if self.temperature == TemperatureUnit::Fahrenheit => to("°F", 1.8, 32.0, 0),
            "K" if self.temperature == TemperatureUnit::Fahrenheit => to("°F", 1.8, 0.0, 0),
            "ml" if self.volume == VolumeUnit::FlOz => to("fl\u{a0}oz", 1.0 / ML_PER_FL_OZ, 0.0, 1),
            _ => None,
        }
    }

    /// The unit shown for a kept one.
    pub fn name(self, kept: &str) -> &str {
        self.conversion(kept).map_or(kept, |c| c.name)
    }

    /// A kept value without its unit.
    pub fn number(self, kept: f64, unit: &str, decimals: usize) -> String {
        self.conversion(unit).map_or_else(|| decimal(kept, decimals), |c| c.number(kept, decimals))
    }

    /// A reading as the gauge showed it: all decimals of micrometres, two of mil.
    pub fn as_read(self, reading: Micrometres) -> String {
        match self.film {
            ThicknessUnit::Um => shortest(reading.um()),
            ThicknessUnit::Mil => self.number(reading.um(), Micrometres::UNIT, 1),
        }
    }

    /// A number as somebody types it in the shown unit, as it is kept; none where it is no number.
    pub fn typed(self, text: &str, unit: &str) -> Option<f64> {
        let typed = number(text)?;
        Some(self.conversion(unit).map_or(typed, |c| c.typed(typed)))
    }

    /// A kept value with its unit.
    pub fn with_unit(self, kept: f64, unit: &str, decimals: usize) -> String {
        format!("{}\u{202f}{}", self.number(kept, unit, decimals), self.name(unit))
    }

    /// A sentence with its figures in the units that are wanted.
    pub fn say(self, text: &str) -> Cow<'_, str> {
        let mut said = Cow::Borrowed(text);
        for unit in ["µm", "°C", "K", "ml"] {
            if let Some(conversion) = self.conversion(unit)
                && said.contains(unit)
            {
                said = Cow::Owned(turned(&said, unit, &conversion));
            }
        }
        Cow::Owned(said.into_owned())
    }
}

/// Blanks between a figure and its unit.
const GAPS: [char; 3] = ['\u{202f}', '\u{a0}', ' '];
/// What joins a figure to one that has a unit.
const JOINED: [&str; 18] = [
    " to ",
    " and ",
    " or ",
    " instead of ",
    " of ", // English
    " bis ",
    " und ",
    " oder ",
    " statt ",
    " von ", // German
    " a ",
    " y ",
    " o ",
    " u ",
    " en vez de ",
    " de ", // Spanish
    "\u{2013}",
    " \u{b1} ",
];

fn is_figure(c: char) -> bool {
    c.is_ascii_digit() || c == decimal_sign()
}

fn turned(text: &str, unit: &str, conversion: &Conversion) -> String {
    let mut said = String::new();
    let mut rest = text;
    while let Some(at) = rest.find(unit) {
        let (before, after) = (&rest[..at], &rest[at + unit.len()..]);
        let stands_alone = !after.starts_with(char::is_alphanumeric);
        match stands_alone.then(|| figures_before(before)).flatten() {
            Some(from) => {
                said.push_str(&before[..from]);
                said.push_str(&conversion.figures(&before[from..]));
                said.push_str(conversion.name);
            }
            // A unit of its own, as in the head of a column; a letter of its own is more likely one of a name.
            None if stands_alone && unit != "K" && !before.ends_with(char::is_alphanumeric) => {
                said.push_str(before);
                said.push_str(conversion.name);
            }
            None => said.push_str(&rest[..at + unit.len()]),
        }
        rest = after;
    }
    said.push_str(rest);
    said
}

/// Where a figure begins that has its digits from here on: one earlier where a sign stands before it that is no hyphen.
fn with_sign(text: &str, digits: usize) -> usize {
    let before = text[..digits].strip_suffix(['-', '\u{2212}']);
    before.filter(|b| !b.ends_with(char::is_alphanumeric)).map_or(digits, str::len)
}

/// Where the figures that a unit belongs to begin, in the text before it.
fn figures_before(text: &str) -> Option<usize> {
    let mut begin = None;
    let mut rest = text.trim_end_matches(GAPS);
    if rest.len() == text.len() {
        return None;
    }
    loop {
        let number = rest.trim_end_matches(is_figure);
        if number.len() == rest.len() || number.ends_with(char::is_alphabetic) {
            return begin;
        }
        let from = with_sign(rest, number.len());
        let number = &rest[..from];
        begin = Some(from);
        rest = JOINED.iter().find_map(|word| number.strip_suffix(word)).unwrap_or("");
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const OURS: ShownUnits =
        ShownUnits { film: ThicknessUnit::Mil, temperature: TemperatureUnit::Fahrenheit, volume: VolumeUnit::FlOz };

    /// 100 µm are 3.94 mil; 20 °C are 68 °F, 100 °C are 212 °F; a US gallon of 128 fl oz is 3.785411784 l (NIST Handbook 44,
    /// appendix C).
    #[test]
    fn values_are_those_of_the_handbook() {
        assert_eq!(OURS.with_unit(100.0, "µm", 1), "3.94\u{202f}mil");
        assert_eq!(OURS.with_unit(20.0, "°C", 0), "68\u{202f}°F");
        assert_eq!(OURS.with_unit(100.0, "°C", 1), "212.0\u{202f}°F");
        assert_eq!(OURS.with_unit(5.0, "K", 0), "9\u{202f}°F");
        assert_eq!(OURS.with_unit(3_785.411_784, "ml", 0), "128.0\u{202f}fl\u{a0}oz");
        let back = OURS.conversion("°C").unwrap();
        assert!((back.kept(68.0) - 20.0).abs() < 1e-12);
        assert!((back.step(0.5) - 1.0).abs() < 1e-12);
    }

    #[test]
    fn sentences_are_turned_over_with_all_figures_that_belong_together() {
        for (kept, shown) in [
            ("The film is 127\u{202f}µm; body filler.", "The film is 5.0\u{202f}mil; body filler."),
            ("1.5 to 3.0\u{202f}µm by 12 panels", "0.06 to 0.12\u{202f}mil by 12 panels"),
            (
                "with 95\u{202f}% confidence between 1.0 and 3.2\u{202f}µm",
                "with 95\u{202f}% confidence between 0.04 and 0.13\u{202f}mil",
            ),
            ("A surface of 30 instead of 20\u{202f}°C", "A surface of 86 instead of 68\u{202f}°F"),
            ("Spot, mean in µm", "Spot, mean in mil"),
            ("at 8.0\u{202f}K above the dew point", "at 14.4\u{202f}°F above the dew point"),
            ("Karl takes 30\u{202f}ml, 20 html", "Karl takes 1.0\u{202f}fl\u{a0}oz, 20 html"),
            ("K. Meier, 20\u{202f}°C", "K. Meier, 68\u{202f}°F"),
            ("Dew point -10\u{202f}°C", "Dew point 14\u{202f}°F"),
            ("\u{2212}40.0 °C", "-40.0 °F"),
        ] {
            assert_eq!(OURS.say(kept), shown);
        }
        assert_eq!(ShownUnits::default().say("127\u{202f}µm at 20\u{202f}°C"), "127\u{202f}µm at 20\u{202f}°C");
    }

    #[test]
    fn labels_without_a_unit_are_turned_over_figure_by_figure() {
        assert_eq!(OURS.conversion("µm").unwrap().figures("\u{2265}\u{202f}102"), "\u{2265}\u{202f}4.0");
    }
}
