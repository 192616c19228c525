//! Lapwright plans a light paint correction and the coating of a vehicle by two people.
//!
//! A job holds what is known of a vehicle: film readings, defects, the air, the crew, the products. From it the library works
//! out how much clear coat each panel may lose, how hard it will be polished, and an order of coating in which the one who
//! applies and the one who levels never need the same place. DEVELOPERS.md at the root is the guide to the code.
//!
//! Layers; an import may only point to a lower number (`tests/architecture.rs` checks it):
//!
//! | layer | module | answers |
//! | --- | --- | --- |
//! | 0 | [`words`] | what the program says, in each language |
//! | 1 | [`units`] | what is a thickness, a temperature, a time |
//! | 1 | [`finding`] | what a check has to say |
//! | 2 | [`geometry`] | where is a panel on the map, and what is under the pointer |
//! | 2 | [`measure`] | how thick is the film, and how sure is that |
//! | 2 | [`coat`] | is the air right, and how long may a coating wait |
//! | 2 | [`crew`] | who does what, when, and never in each other's way |
//! | 3 | [`bay`] | what really happened, and what comes next |
//! | 3 | [`polish`] | what may go, what must go, what will be done |
//! | 3 | [`vehicle`] | which panels there are, where one stands to reach them |
//! | 4 | [`job`] | the document, its commands, undo |
//! | 5 | [`insight`] | everything computed from a job |
//! | 5 | [`mod@file`] | jobs on disk, what learners have done |
//! | 6 | [`practice`] | what an apprentice lays, what is wrong with it, how near to the best it is |
//! | 6 | [`scene`] | the map and the time chart as shapes with a meaning |
//! | 7 | [`sheets`] | the customer sheet, crew cards and the record, as PDF, HTML, SVG, PNG |
//! | 8 | [`work`] | named background threads |
//! | 9 | [`cli`] | the command line |
//! | 10 | `gui` | the window (feature `gui`); without a display it hands over to the command line |

pub mod bay;
pub mod cli;
pub mod coat;
pub mod crew;
pub mod file;
pub mod finding;
pub mod geometry;
#[cfg(feature = "gui")]
pub mod gui;
pub mod insight;
pub mod job;
pub mod measure;
pub mod polish;
pub mod practice;
pub mod scene;
pub mod sheets;
pub mod units;
pub mod vehicle;
pub mod words;
pub mod work;
