//! Generated commands: sensible ones, ones past the end of a list, and ones that would make a faulty job.

use lapwright::coat::{Air, Product};
use lapwright::crew::{PlanFile, PlanRow};
use lapwright::geometry::MapPoint;
use lapwright::job::{Command, Defect, Member, PanelFact, Role, TextField};
use lapwright::measure::{Gauge, GaugePrinciple};
use lapwright::polish::{DefectKind, Finish, Goal, PaintHistory, Prices, RemovalPolicy, Shop, UsePolicy};
use lapwright::units::{Celsius, Micrometres, Millimetres, RelativeHumidity};
use lapwright::vehicle::{PanelId, Size, Template};
use proptest::prelude::*;
use std::sync::Arc;

fn panel(template: &Template) -> impl Strategy<Value = PanelId> + use<> {
    let ids: Vec<PanelId> = template.panels.iter().map(|p| p.id.clone()).collect();
    // Few panels, so that commands meet on the same one.
    prop_oneof![3 => proptest::sample::select(ids[..4.min(ids.len())].to_vec()), 1 => proptest::sample::select(ids)]
}

fn thickness() -> impl Strategy<Value = Micrometres> {
    prop_oneof![8 => 60.0..400.0, 1 => Just(0.0), 1 => 400.0..100_000.0]
        .prop_map(|um| Micrometres::new(um).expect("a thickness"))
}

fn place() -> impl Strategy<Value = MapPoint> {
    prop_oneof![
        20 => (-500.0_f32..5_000.0, -2_000.0_f32..2_000.0),
        1 => (Just(f32::NAN), Just(0.0)),
        1 => (Just(0.0), Just(f32::INFINITY)),
    ]
    .prop_map(|(x, y)| MapPoint::new(x, y))
}

/// Letters, quotes, backslashes, line breaks, signs of any script.
fn words() -> impl Strategy<Value = String> {
    prop_oneof![4 => "[A-Za-z \"\\\\\\n\\tµ°]{0,20}", 1 => any::<String>()]
}

fn defect() -> impl Strategy<Value = Defect> {
    let depth = proptest::option::of((thickness(), thickness()));
    (proptest::sample::select(DefectKind::ALL), place(), 0.0..3_000.0, 0_u8..8, depth, words()).prop_map(
        |(kind, at, size, quantity, depth_um, note)| {
            let size_mm = Millimetres::new(size).expect("a length");
            Defect { kind, at, size_mm, quantity, depth_um, note }
        },
    )
}

fn fact() -> impl Strategy<Value = PanelFact> {
    use Finish as F;
    let finishes = [F::ClearCoat, F::SingleStage, F::Matte, F::FilmCovered, F::Wrapped, F::Bare, F::Glass, F::Lens];
    let history = prop_oneof![
        Just(PaintHistory::Unknown),
        Just(PaintHistory::Original),
        Just(PaintHistory::Refinished),
        any::<u32>().prop_map(|days| PaintHistory::FreshRefinish { days }),
        thickness().prop_map(|removed_um| PaintHistory::PolishedBefore { removed_um }),
    ];
    prop_oneof![
        proptest::option::of(proptest::sample::select(finishes.to_vec())).prop_map(PanelFact::Finish),
        history.prop_map(PanelFact::History),
        any::<bool>().prop_map(PanelFact::LeftUncoated),
        words().prop_map(PanelFact::Note),
    ]
}

fn crew() -> impl Strategy<Value = Vec<Member>> {
    let roles = proptest::sample::subsequence(vec![Role::Apply, Role::Level], 0..=2);
    let member = ("[A-C]{0,1}", roles).prop_map(|(name, roles)| Member { name, roles });
    proptest::collection::vec(member, 0..4)
}

fn product() -> impl Strategy<Value = Product> {
    let odd = prop_oneof![8 => 0.0..150.0, 1 => Just(f64::NAN), 1 => Just(-1.0), 1 => Just(f64::INFINITY)];
    (odd, -5_i64..1_000, 0_i64..2_000, 0_u32..12, words()).prop_map(
        |(odd, window_min_s, window_max_s, layers, name)| Product {
            name,
            activation_kj_per_mol: odd,
            window_min_s,
            window_max_s,
            layers,
            ..Product::default()
        },
    )
}

fn shop() -> impl Strategy<Value = Shop> {
    let price = || prop_oneof![8 => 0.0..200.0, 1 => Just(f64::NAN), 1 => Just(-1.0), 1 => Just(1e9)];
    (any::<bool>(), words(), price(), price(), 0.0..20.0).prop_map(
        |(leads, currency, labour_per_hour, pad, polish_ml_per_m2)| Shop {
            leads,
            uses: UsePolicy { polish_ml_per_m2, ..UsePolicy::default() },
            prices: Prices { currency, labour_per_hour, pad, ..Prices::default() },
        },
    )
}

fn air() -> impl Strategy<Value = Air> {
    (-40.0..100.0, 0.1..100.0, -40.0..100.0).prop_map(|(air, humidity, surface)| Air {
        air_temp_c: Celsius::new(air).expect("a temperature"),
        humidity_pct: RelativeHumidity::new(humidity).expect("a humidity"),
        surface_temp_c: Celsius::new(surface).expect("a temperature"),
    })
}

fn order() -> impl Strategy<Value = Option<Arc<PlanFile>>> {
    let row = ("[a-z]{1,3}/apply1", "[A-C]", prop_oneof![9 => 0_i64..5_000, 1 => any::<i64>()]);
    let row = row.prop_map(|(id, worker, start_s)| PlanRow { id, worker, start_s });
    proptest::option::of(proptest::collection::vec(row, 0..4).prop_map(|operations| {
        Arc::new(PlanFile { operations, makespan_s: 100, walking_s: 10, cost: 1_010, bound: 900 })
    }))
}

fn text_field() -> impl Strategy<Value = TextField> {
    use TextField as T;
    proptest::sample::select(vec![T::Name, T::Vehicle, T::Plate, T::History, T::Customer, T::Wishes])
}

/// Sizes that a vehicle can have, and some that none has.
fn size() -> impl Strategy<Value = Option<Size>> {
    let length = || prop_oneof![6 => 1_500.0..3_900.0, 1 => 0.0..100_000.0].prop_map(Millimetres::of);
    let size = (length(), length(), length()).prop_map(|(length, width, height)| Size { length, width, height });
    proptest::option::of(size)
}

/// Any command, on panels that the template has.
pub(crate) fn command(template: &Template) -> impl Strategy<Value = Command> + use<> {
    use Command as C;
    let p = || panel(template);
    let at = 0_usize..3;
    let goal = prop_oneof![Just(Goal::Gloss), (-0.1..1.1).prop_map(|share| Goal::Correct { share })];
    let principle = proptest::sample::select(vec![
        GaugePrinciple::MagneticInduction,
        GaugePrinciple::EddyCurrent,
        GaugePrinciple::Ultrasonic,
    ]);
    prop_oneof![
        (text_field(), words()).prop_map(|(field, text)| C::SetText(field, text)),
        (p(), place(), thickness()).prop_map(|(panel, at, thickness)| C::AddSpot { panel, at, thickness }),
        (p(), place(), thickness()).prop_map(|(panel, at, thickness)| C::AddSpot { panel, at, thickness }),
        (p(), at.clone(), thickness()).prop_map(|(panel, spot, thickness)| C::AddReading { panel, spot, thickness }),
        (p(), at.clone(), at.clone(), thickness()).prop_map(|(panel, spot, reading, thickness)| C::SetReading {
            panel,
            spot,
            reading,
            thickness
        }),
        (p(), at.clone(), at.clone()).prop_map(|(panel, spot, reading)| C::RemoveReading { panel, spot, reading }),
        (p(), at.clone(), any::<bool>()).prop_map(|(panel, spot, edge)| C::SetEdge { panel, spot, edge }),
        (p(), defect()).prop_map(|(panel, defect)| C::AddDefect(panel, defect)),
        (p(), at.clone(), defect()).prop_map(|(panel, defect, value)| C::SetDefect { panel, defect, value }),
        (p(), at).prop_map(|(panel, defect)| C::RemoveDefect { panel, defect }),
        (p(), fact()).prop_map(|(panel, fact)| C::SetFact(panel, fact)),
        goal.prop_map(C::SetGoal),
        crew().prop_map(C::SetCrew),
        principle.prop_map(|principle| C::SetGauge(Gauge { principle, ..Gauge::default() })),
        thickness().prop_map(|visit_cap_um| C::SetPolicy(Box::new(RemovalPolicy {
            visit_cap_um,
            ..RemovalPolicy::default()
        }))),
        shop().prop_map(|shop| C::SetShop(Box::new(shop))),
        product().prop_map(|product| C::SetProduct(Box::new(product))),
        air().prop_map(C::SetAir),
        order().prop_map(C::SetOrder),
        size().prop_map(C::SetSize),
    ]
}
