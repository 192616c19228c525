//! Random numbers that are the same on every machine.
//!
//! SplitMix64 (Steele, Lea and Flood 2014, "Fast splittable pseudorandom number generators"): one addition and a mixing
//! function; good enough for a search and a simulation, and a seed is all of its state.

/// A stream of random numbers.
#[derive(Debug, Clone)]
pub(crate) struct Random {
    state: u64,
}

impl Random {
    /// The stream of a seed; `stream` tells threads and purposes apart.
    pub(crate) fn new(seed: u64, stream: u64) -> Self {
        let mut random = Self { state: seed ^ stream.wrapping_mul(0xA076_1D64_78BD_642F) };
        random.next();
        random
    }

    /// 64 random bits.
    pub(crate) fn next(&mut self) -> u64 {
        self.state = self.state.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.state;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        z ^ (z >> 31)
    }

    /// A number from 0 to `below` - 1; `below` at least 1. The bias is below `below` / 2^32.
    pub(crate) fn below(&mut self, below: usize) -> usize {
        (((self.next() >> 32) * below as u64) >> 32) as usize
    }

    /// A number in (0, 1).
    pub(crate) fn unit(&mut self) -> f64 {
        ((self.next() >> 11) as f64 + 0.5) / (1_u64 << 53) as f64
    }

    /// A standard normal number, by Marsaglia's polar method.
    pub(crate) fn normal(&mut self) -> f64 {
        loop {
            let (x, y) = (2.0 * self.unit() - 1.0, 2.0 * self.unit() - 1.0);
            let s = x * x + y * y;
            if s > 0.0 && s < 1.0 {
                return x * (-2.0 * s.ln() / s).sqrt();
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// First outputs for seed 1234567 as published with the reference implementation (Vigna, splitmix64.c; Rosetta Code).
    #[test]
    fn the_stream_is_the_published_one() {
        let mut random = Random { state: 1_234_567 };
        assert_eq!(random.next(), 6_457_827_717_110_365_317);
        assert_eq!(random.next(), 3_203_168_211_198_807_973);
    }

    #[test]
    fn normal_numbers_have_mean_0_and_variance_1() {
        let mut random = Random::new(7, 0);
        let n = 100_000;
        let (mut sum, mut squares) = (0.0, 0.0);
        for _ in 0..n {
            let x = random.normal();
            sum += x;
            squares += x * x;
        }
        assert!((sum / f64::from(n)).abs() < 0.015, "five standard errors");
        assert!((squares / f64::from(n) - 1.0).abs() < 0.025, "over five standard errors");
    }
}
