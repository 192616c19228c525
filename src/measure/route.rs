//! A short way through all the spots of a survey.

use super::Place;

/// How many of the places nearest to the first are tried as the second.
const STARTS: usize = 12;

/// Order in which to visit places on a plane, starting at the first; every index once.
///
/// From each of the nearest places as the second, nearest neighbour, then 2-opt and moving of single places until nothing helps; the
/// shortest of these. Deterministic. Not proven shortest; on small sets the tests hold it against all orders. Distances in the
/// unit of the places; at most a few hundred places.
pub fn survey_route(places: &[Place]) -> Vec<usize> {
    if places.len() < 3 {
        return (0..places.len()).collect();
    }
    let mut seconds: Vec<usize> = (1..places.len()).collect();
    seconds.sort_by(|&a, &b| distance(places, 0, a).total_cmp(&distance(places, 0, b)));
    let routes = seconds.into_iter().take(STARTS).map(|second| {
        let mut route = nearest_first(places, second);
        while improve(places, &mut route) {}
        route
    });
    routes.min_by(|a, b| route_length(places, a).total_cmp(&route_length(places, b))).unwrap_or_default()
}

/// From the first place to `second`, then always to the nearest that is left.
fn nearest_first(places: &[Place], second: usize) -> Vec<usize> {
    let mut left: Vec<usize> = (1..places.len()).filter(|&i| i != second).collect();
    let mut route = vec![0, second];
    let mut last = second;
    while let Some(next) =
        (0..left.len()).min_by(|&a, &b| distance(places, last, left[a]).total_cmp(&distance(places, last, left[b])))
    {
        last = left.remove(next);
        route.push(last);
    }
    route
}

/// Length of a way through places in an order.
pub fn route_length(places: &[Place], route: &[usize]) -> f64 {
    route.windows(2).map(|leg| distance(places, leg[0], leg[1])).sum()
}

fn distance(places: &[Place], a: usize, b: usize) -> f64 {
    (places[a].x - places[b].x).hypot(places[a].y - places[b].y)
}

/// One round of improvements; the first place stays first and the way does not return to it.
fn improve(places: &[Place], route: &mut Vec<usize>) -> bool {
    let mut better = false;
    for start in 1..route.len() {
        for end in start..route.len() {
            // Turn the stretch round.
            let before = distance(places, route[start - 1], route[start]);
            let after = distance(places, route[start - 1], route[end]);
            let (tail_before, tail_after) = route
                .get(end + 1)
                .map_or((0.0, 0.0), |&next| (distance(places, route[end], next), distance(places, route[start], next)));
            if after + tail_after < before + tail_before - 1e-9 {
                route[start..=end].reverse();
                better = true;
            }
        }
        // Move one place to where it costs least.
        let taken = route.remove(start);
        let cost = |at: usize| {
            let from = distance(places, route[at - 1], taken);
            route
                .get(at)
                .map_or(from, |&next| from + distance(places, taken, next) - distance(places, route[at - 1], next))
        };
        let stay = cost(start);
        let best = (1..=route.len()).min_by(|a, b| cost(*a).total_cmp(&cost(*b))).unwrap_or(start);
        let at = if cost(best) < stay - 1e-9 { best } else { start };
        better |= at != start;
        route.insert(at, taken);
    }
    better
}
