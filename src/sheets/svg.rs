//! Pictures as SVG (SVG 1.1), with words for those who can't see them. Text is drawn as outlines, so that it looks the same wherever
//! the font is missing; what it says stands in the description.

use super::font;
use super::html::put;
use super::model::Figure;
use super::page::{Item, Line, PaperPoint, Piece};
use super::palette::{PAPER, Rgb};

/// A picture as an SVG file.
pub fn svg(figure: &Figure) -> String {
    format!("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n{}\n", element(figure, "picture"))
}

/// A picture as an element of a page; `id` tells it from others there.
pub(super) fn element(figure: &Figure, id: &str) -> String {
    let (w, h) = (number(figure.width), number(figure.height));
    let mut out = format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {w} {h}\" width=\"{w}mm\" height=\"{h}mm\" role=\"img\" \
         aria-labelledby=\"{id}-title {id}-desc\">\n<title id=\"{id}-title\">{}</title>\n<desc id=\"{id}-desc\">{}</desc>\n\
         <rect width=\"{w}\" height=\"{h}\" fill=\"{}\"/>\n",
        escaped(&figure.title),
        escaped(&figure.words),
        PAPER.hex()
    );
    for item in &figure.items {
        match item {
            Item::Path { pieces, fill, line } => path(&mut out, pieces, *fill, *line, true),
            Item::Text(run) => {
                path(&mut out, &font::outline(&run.text, run.bold, run.size, run.at), Some(run.colour), None, false);
            }
        }
    }
    out.push_str("</svg>");
    out
}

fn path(out: &mut String, pieces: &[Piece], fill: Option<Rgb>, line: Option<Line>, even_odd: bool) {
    if pieces.is_empty() {
        return;
    }
    out.push_str("<path d=\"");
    let point = |out: &mut String, p: PaperPoint| {
        out.push_str(&number(p.x));
        out.push(' ');
        out.push_str(&number(p.y));
    };
    for piece in pieces {
        match *piece {
            Piece::Move(p) => {
                out.push('M');
                point(out, p);
            }
            Piece::Line(p) => {
                out.push('L');
                point(out, p);
            }
            Piece::Curve(a, b, c) => {
                out.push('C');
                for (k, p) in [a, b, c].into_iter().enumerate() {
                    if k > 0 {
                        out.push(' ');
                    }
                    point(out, p);
                }
            }
            Piece::Close => out.push('Z'),
        }
    }
    out.push('"');
    let mut attribute = |name: &str, value: &str| put(out, format_args!(" {name}=\"{value}\""));
    attribute("fill", &fill.map_or_else(|| "none".to_owned(), Rgb::hex));
    if even_odd && fill.is_some() {
        attribute("fill-rule", "evenodd");
    }
    if let Some(line) = line {
        attribute("stroke", &line.colour.hex());
        attribute("stroke-width", &number(line.width));
        attribute("stroke-linejoin", "round");
        if let Some((dash, gap)) = line.dash {
            attribute("stroke-dasharray", &format!("{} {}", number(dash), number(gap)));
        }
    }
    out.push_str("/>\n");
}

/// At most three decimals, none that say nothing.
fn number(value: f32) -> String {
    let text = format!("{value:.3}");
    let text = text.trim_end_matches('0').trim_end_matches('.');
    if text == "-0" { "0".to_owned() } else { text.to_owned() }
}

/// Text between tags or in an attribute. Characters that XML can't hold become blanks.
pub(super) fn escaped(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for c in text.chars() {
        match c {
            '&' => out.push_str("&amp;"),
            '<' => out.push_str("&lt;"),
            '>' => out.push_str("&gt;"),
            '"' => out.push_str("&quot;"),
            '\n' | '\t' => out.push(c),
            c if c.is_control() || matches!(c, '\u{FFFE}' | '\u{FFFF}') => out.push(' '),
            c => out.push(c),
        }
    }
    out
}
