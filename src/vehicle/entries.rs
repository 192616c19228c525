//! Building blocks of the file format that refuse what RON alone would let through.

use crate::say;
use crate::words::shortest;
use serde::de::{Error, MapAccess, Visitor};
use serde::{Deserialize, Deserializer, Serialize, Serializer};
use std::fmt;
use std::marker::PhantomData;

/// A finite number of at most a hundred thousand in size: NaN, infinity and absurd values are refused where they stand.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(try_from = "f64", into = "f64")]
pub(super) struct Number(f64);

impl Number {
    pub(super) fn of(value: f64) -> Self {
        Self(if value.is_finite() { value.clamp(-1e5, 1e5) } else { 0.0 })
    }
    /// A length as it is written to a file: to a thousandth of a millimetre.
    pub(super) fn rounded(value: f64) -> Self {
        Self::of((value * 1000.0).round() / 1000.0)
    }
    pub(super) fn get(self) -> f64 {
        self.0
    }
    pub(super) fn f32(self) -> f32 {
        self.0 as f32
    }
}

impl TryFrom<f64> for Number {
    type Error = String;
    fn try_from(value: f64) -> Result<Self, String> {
        let fits = value.is_finite() && value.abs() <= 1e5;
        if fits { Ok(Self(value)) } else { Err(say!("vehicle-number-needed", value = shortest(value))) }
    }
}
impl From<Number> for f64 {
    fn from(n: Number) -> Self {
        n.0
    }
}

/// A name in a template: one to 64 small letters, digits and hyphens.
#[derive(Debug, Clone, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(try_from = "String", into = "String")]
pub(super) struct Name(String);

impl Name {
    /// A name made by the program; what a name can't hold becomes a hyphen.
    pub(super) fn made(text: &str) -> Self {
        let plain = |c: char| if c.is_ascii_lowercase() || c.is_ascii_digit() { c } else { '-' };
        let name: String = text.to_lowercase().chars().map(plain).take(64).collect();
        Self(if name.is_empty() { "unnamed".to_owned() } else { name })
    }

    pub(super) fn as_str(&self) -> &str {
        &self.0
    }
}

impl TryFrom<String> for Name {
    type Error = String;
    fn try_from(text: String) -> Result<Self, String> {
        let plain = text.chars().all(|c| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '-');
        if plain && (1..=64).contains(&text.len()) {
            Ok(Self(text))
        } else {
            Err(say!("vehicle-name-needed", text = text.escape_debug().to_string()))
        }
    }
}
impl From<Name> for String {
    fn from(name: Name) -> Self {
        name.0
    }
}

/// A map in the order of the file; a key that comes twice is an error, which RON alone would not notice.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Entries<V>(pub(super) Vec<(Name, V)>);

impl<V> Default for Entries<V> {
    fn default() -> Self {
        Self(Vec::new())
    }
}

impl<V> Entries<V> {
    /// Whether a name is taken.
    pub(super) fn has(&self, name: &str) -> bool {
        self.0.iter().any(|(n, _)| n.as_str() == name)
    }
}

impl<V: Serialize> Serialize for Entries<V> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_map(self.0.iter().map(|(k, v)| (k, v)))
    }
}

impl<'de, V: Deserialize<'de>> Deserialize<'de> for Entries<V> {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        deserializer.deserialize_map(EntriesVisitor(PhantomData))
    }
}

struct EntriesVisitor<V>(PhantomData<V>);

impl<'de, V: Deserialize<'de>> Visitor<'de> for EntriesVisitor<V> {
    type Value = Entries<V>;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("a map from names to values")
    }

    fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> Result<Self::Value, A::Error> {
        let mut seen = std::collections::BTreeSet::new();
        let mut entries = Vec::new();
        while let Some(name) = map.next_key::<Name>()? {
            if !seen.insert(name.clone()) {
                return Err(A::Error::custom(say!("vehicle-name-twice", name = name.as_str())));
            }
            entries.push((name, map.next_value()?));
        }
        Ok(Entries(entries))
    }
}
