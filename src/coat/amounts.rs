//! How much is needed: coating, drops, bottles, applicators, towels.

use super::product::Product;
use crate::units::{Millilitres, SquareMetres};

/// Volume of a drop from a dropper bottle, in ml (our estimate: about 20 to the millilitre).
pub const DROP_ML: f64 = 0.05;

/// Liquid for all layers on an area, without the first load of the applicator.
pub fn amount(area: SquareMetres, product: &Product) -> Millilitres {
    let ml = area.m2() * product.amount_ml_per_m2 * f64::from(product.layers);
    Millilitres::new(ml.min(1e6)).unwrap_or(Millilitres::ZERO)
}

/// Bottles for an amount and the first load of each layer's applicator, in whole bottles.
pub fn bottles(amount: Millilitres, product: &Product) -> u32 {
    let all = amount.ml() + product.first_load_ml.ml() * f64::from(product.layers);
    if all <= 0.0 || product.bottle_ml.ml() <= 0.0 { 0 } else { (all / product.bottle_ml.ml() - 1e-9).ceil() as u32 }
}

/// Drops of a volume, to the nearest whole one.
pub fn drops(volume: Millilitres) -> u32 {
    (volume.ml() / DROP_ML).round() as u32
}

/// What a coating uses up besides itself.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct CoatingMaterials {
    /// Applicators: one a layer and per eight square metres, before it hardens.
    pub applicators: u32,
    /// Towels for the first levelling, changed every four square metres before they are wet.
    pub level_towels: u32,
    /// Dry towels for the last wipe, as many as for levelling.
    pub last_towels: u32,
}

/// Applicators and towels for an area (our estimates around common practice; no source).
pub fn coating_materials(area: SquareMetres, product: &Product) -> CoatingMaterials {
    let per_layer = |m2: f64| ((area.m2() / m2 - 1e-9).ceil().max(0.0) as u32).saturating_mul(product.layers);
    let level_towels = per_layer(4.0);
    CoatingMaterials { applicators: per_layer(8.0), level_towels, last_towels: level_towels }
}
