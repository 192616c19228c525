//! Generated commands: sensible ones, ones past the end of a list, and ones that would make a faulty job.

use lapwright::coat::{Air, MeasuredWindow, Product};
use lapwright::crew::{PlanFile, PlanRow};
use lapwright::geometry::MapPoint;
use lapwright::job::{
    Beginning, Command, Defect, Experience, Extent, Member, OrderChoices, PanelFact, PhotoId, PreviousCoating, Reading,
    Role, Spot, TextField,
};
use lapwright::measure::{Assurance, Gauge, GaugePrinciple};
use lapwright::polish::{
    DefectKind, Equipment, Fingernail, Finish, FinishSeen, Goal, Level, PaintHardness, PaintHistory, PolishStep,
    Prices, RemovalBasis, RemovalPolicy, Seen, Shop, TestRemoval, TestResult, TestSpots, UsePolicy,
};
use lapwright::units::{Celsius, Date, Micrometres, Millimetres, RelativeHumidity};
use lapwright::vehicle::{PanelId, Side, Size, Substrate, Template};
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
pub(super) fn words() -> impl Strategy<Value = String> {
    prop_oneof![4 => "[A-Za-z \"\\\\\\n\\tµ°]{0,20}", 1 => any::<String>()]
}

/// Drawings of every kind, some with too few points.
fn extent() -> impl Strategy<Value = Extent> {
    let points = |most| proptest::collection::vec(place(), 0..most);
    prop_oneof![2 => Just(Extent::Point), 1 => points(5).prop_map(Extent::Line), 1 => points(6).prop_map(Extent::Area)]
}

fn photos() -> impl Strategy<Value = Vec<PhotoId>> {
    proptest::collection::vec(any::<[u8; 32]>().prop_map(PhotoId::of_hash), 0..3)
}

fn defect() -> impl Strategy<Value = Defect> {
    let depth = proptest::option::of((thickness(), thickness()));
    let nails = vec![Fingernail::NotTried, Fingernail::Catches, Fingernail::Slides];
    let drawn = (place(), extent(), photos(), proptest::sample::select(nails));
    (proptest::sample::select(DefectKind::ALL), drawn, 0.0..3_000.0, 0_u8..8, depth, words()).prop_map(
        |(kind, (at, extent, photos, fingernail), size, quantity, depth_um, note)| {
            let size_mm = Millimetres::new(size).expect("a length");
            Defect { kind, at, extent, size_mm, quantity, fingernail, depth_um, photos, note }
        },
    )
}

fn date() -> impl Strategy<Value = Option<Date>> {
    proptest::option::of((0_i16..9_999, 1_i8..13, 1_i8..32).prop_map(|(y, m, d)| Date::of(y, m, d)))
        .prop_map(Option::flatten)
}

fn spot() -> impl Strategy<Value = Spot> {
    let readings = proptest::collection::vec(thickness().prop_map(Reading::of), 0..4);
    (place(), any::<bool>(), readings, words()).prop_map(|(at, edge, readings, note)| Spot { at, edge, readings, note })
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
    let hardness = vec![PaintHardness::Soft, PaintHardness::Usual, PaintHardness::Hard];
    let substrates = vec![Substrate::Steel, Substrate::Aluminium, Substrate::Plastic, Substrate::Composite];
    prop_oneof![
        proptest::option::of(proptest::sample::select(finishes.to_vec())).prop_map(PanelFact::Finish),
        history.prop_map(PanelFact::History),
        date().prop_map(PanelFact::PaintedOn),
        proptest::sample::select(PreviousCoating::ALL.to_vec()).prop_map(PanelFact::Coating),
        proptest::sample::select(hardness).prop_map(PanelFact::Hardness),
        proptest::option::of(proptest::sample::select(substrates)).prop_map(PanelFact::Substrate),
        proptest::option::of(proptest::sample::select(Level::ALL.to_vec())).prop_map(PanelFact::LevelAtMost),
        any::<bool>().prop_map(PanelFact::LeftUncoated),
        words().prop_map(PanelFact::Note),
    ]
}

/// Lists of steps: shuffled, renamed, twice the same, numbers that no step has.
fn steps() -> impl Strategy<Value = Vec<PolishStep>> {
    let odd = prop_oneof![8 => 0.0..500.0, 1 => Just(f64::NAN), 1 => Just(-1.0)];
    let start = proptest::sample::subsequence(PolishStep::starting_set(), 0..=5).prop_shuffle();
    (start, proptest::option::of("[A-C]{0,1}"), odd, 0_u32..60).prop_map(|(mut steps, name, odd, passes)| {
        if let Some(first) = steps.first_mut() {
            first.name = name.unwrap_or_else(|| first.name.clone());
            first.seconds_per_m2_pass = odd;
            first.max_passes = passes;
            first.equipment = Equipment { per_minute: odd, ..first.equipment.clone() };
        }
        steps
    })
}

fn test_spots() -> impl Strategy<Value = Arc<TestSpots>> {
    use PaintHardness as P;
    let names: Vec<String> = PolishStep::starting_set().into_iter().map(|s| s.name).chain(["A".to_owned()]).collect();
    let removal =
        (thickness(), thickness(), proptest::sample::select(vec![RemovalBasis::Measured, RemovalBasis::Estimated]));
    let removal = removal.prop_map(|(um, give_or_take_um, basis)| TestRemoval { um, give_or_take_um, basis });
    let seen = (proptest::sample::select(DefectKind::ALL), -0.1..1.1).prop_map(|(kind, share)| Seen { kind, share });
    let finish = proptest::sample::select(vec![FinishSeen::NotJudged, FinishSeen::CanStay, FinishSeen::NeedsFiner]);
    let (removal, seen) = (proptest::option::of(removal), proptest::option::of(seen));
    let result = (proptest::sample::select(names), 0_u32..52, removal, seen, finish)
        .prop_map(|(step, passes, removal, seen, finish)| TestResult { step, passes, removal, seen, finish });
    let paint = proptest::sample::select(vec![P::Soft, P::Usual, P::Hard]);
    (paint, proptest::collection::vec(result, 0..4)).prop_map(|(paint, results)| Arc::new(TestSpots { paint, results }))
}

fn crew() -> impl Strategy<Value = Vec<Member>> {
    let roles = proptest::sample::subsequence(vec![Role::Apply, Role::Level], 0..=2);
    let member = ("[A-C]{0,1}", roles, proptest::sample::select(&Experience::ALL[..]))
        .prop_map(|(name, roles, experience)| Member { name, roles, experience });
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
    let warmest = proptest::option::of(-40.0..100.0);
    (-40.0..100.0, 0.1..100.0, -40.0..100.0, warmest).prop_map(|(air, humidity, surface, warmest)| Air {
        air_temp_c: Celsius::new(air).expect("a temperature"),
        humidity_pct: RelativeHumidity::new(humidity).expect("a humidity"),
        surface_temp_c: Celsius::new(surface).expect("a temperature"),
        warmest_surface_temp_c: warmest.map(|t: f64| Celsius::new(t).expect("a temperature")),
    })
}

fn patch() -> impl Strategy<Value = Option<MeasuredWindow>> {
    let patch = (-5_i64..1_000, -5_i64..2_000, air());
    proptest::option::of(patch.prop_map(|(min_s, max_s, air)| MeasuredWindow { min_s, max_s, air }))
}

fn choices(template: &Template) -> impl Strategy<Value = OrderChoices> + use<> {
    let begins = ("[A-C]", panel(template)).prop_map(|(member, panel)| Beginning { member, panel });
    let side = proptest::option::of(proptest::sample::select(vec![Side::Left, Side::Right, Side::Centre]));
    let first = proptest::collection::vec(panel(template), 0..4);
    (proptest::collection::vec(begins, 0..3), first, side, any::<bool>())
        .prop_map(|(begins, first, side, paint_first)| OrderChoices { begins, first, side, paint_first })
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

/// Any command, on panels that the template has; some are several in one.
pub(crate) fn command(template: &Template) -> impl Strategy<Value = Command> + use<> {
    let several = proptest::collection::vec(one_command(template), 0..5);
    let several = several.prop_map(|commands| Command::All { label: "change several things", commands });
    prop_oneof![12 => one_command(template), 1 => several]
}

fn one_command(template: &Template) -> impl Strategy<Value = Command> + use<> {
    use Command as C;
    let p = || panel(template);
    let at = 0_usize..3;
    let goal = prop_oneof![Just(Goal::Gloss), (-0.1..1.1).prop_map(|share| Goal::Correct { share })];
    let principle = proptest::sample::select(GaugePrinciple::ALL.to_vec());
    prop_oneof![
        (text_field(), words()).prop_map(|(field, text)| C::SetText(field, text)),
        (p(), proptest::collection::vec(spot(), 0..3)).prop_map(|(panel, spots)| C::AddSpots(panel, spots)),
        (p(), at.clone()).prop_map(|(panel, spot)| C::RemoveSpot { panel, spot }),
        date().prop_map(C::SetDate),
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
        steps().prop_map(C::SetSteps),
        test_spots().prop_map(C::SetTestSpots),
        shop().prop_map(|shop| C::SetShop(Box::new(shop))),
        product().prop_map(|product| C::SetProduct(Box::new(product))),
        air().prop_map(C::SetAir),
        patch().prop_map(C::SetPatch),
        choices(template).prop_map(C::SetChoices),
        order().prop_map(C::SetOrder),
        size().prop_map(C::SetSize),
        (0.6..1.0, 0.6..1.0).prop_map(|(coverage, confidence)| C::SetAssurance(Assurance { coverage, confidence })),
        super::survey::survey_change(&p().boxed()).prop_map(C::Survey),
        super::survey::survey_change(&p().boxed()).prop_map(C::Survey),
    ]
}
