//! A sheet as one HTML file: headings, tables, lists, pictures as inline SVG. No scripts, nothing from outside.

use super::model::{Block, Sheet, Table, TextSize};
use super::palette::{ACCENT, HAIRLINE, INK, INK_SOFT, PAPER};
use super::svg::{element, escaped};
use crate::say;
use std::fmt::Write;

/// Writes a sheet as HTML (HTML Living Standard).
pub fn html(sheet: &Sheet) -> String {
    let mut out = format!(
        "<!DOCTYPE html>\n<html lang=\"{}\">\n<head>\n<meta charset=\"utf-8\">\n<meta name=\"viewport\" \
         content=\"width=device-width, initial-scale=1\">\n<title>{}</title>\n<style>\n{}</style>\n</head>\n<body>\n<main>\n",
        sheet.language,
        escaped(&sheet.title),
        style()
    );
    for (index, block) in sheet.blocks.iter().enumerate() {
        write_block(&mut out, block, index);
    }
    put(
        &mut out,
        format_args!(
            "</main>\n<footer>\n<p>{}</p>\n</footer>\n</body>\n</html>\n",
            escaped(&say!("sheet-foot", title = sheet.title.as_str(), code = sheet.code.as_str()))
        ),
    );
    out
}

fn write_block(out: &mut String, block: &Block, index: usize) {
    match block {
        Block::Heading(level, text) => tag(out, &format!("h{level}"), text),
        Block::Text(text) => tag(out, "p", text),
        Block::Small(text) => {
            out.push_str("<p class=\"small\">");
            out.push_str(&escaped(text));
            out.push_str("</p>\n");
        }
        Block::List(items) => {
            out.push_str("<ul>\n");
            for item in items {
                tag(out, "li", item);
            }
            out.push_str("</ul>\n");
        }
        Block::Facts(facts) => {
            out.push_str("<dl>\n");
            for (name, what) in facts {
                tag(out, "dt", name);
                tag(out, "dd", what);
            }
            out.push_str("</dl>\n");
        }
        Block::Table(table) => write_table(out, table),
        Block::Figure(figure) => {
            out.push_str("<figure>\n");
            out.push_str(&element(figure, &format!("figure{index}")));
            out.push('\n');
            tag(out, "figcaption", &figure.title);
            out.push_str("</figure>\n");
        }
        Block::FillIn(names) => {
            out.push_str("<div class=\"fill-in\">\n");
            for name in names {
                tag(out, "p", name);
            }
            out.push_str("</div>\n");
        }
        Block::NewPage => out.push_str("<div class=\"page\"></div>\n"),
    }
}

/// Writing to a text never fails.
pub(super) fn put(out: &mut String, text: std::fmt::Arguments<'_>) {
    _ = out.write_fmt(text);
}

fn tag(out: &mut String, name: &str, text: &str) {
    put(out, format_args!("<{name}>{}</{name}>\n", escaped(text)));
}

fn write_table(out: &mut String, table: &Table) {
    let class = match table.size {
        TextSize::Small => "small",
        TextSize::Normal => "normal",
        TextSize::Large => "large",
    };
    put(out, format_args!("<table class=\"{class}\">\n"));
    let cell = |out: &mut String, name: &str, more: &str, text: &str, figures: bool| {
        let class = if figures { " class=\"figures\"" } else { "" };
        let text = escaped(text).replace('\n', "<br>");
        put(out, format_args!("<{name}{more}{class}>{text}</{name}>"));
    };
    if table.columns.iter().any(|c| !c.head.is_empty()) {
        out.push_str("<thead>\n<tr>");
        for column in &table.columns {
            let name = if column.head.is_empty() { ("td", "") } else { ("th", " scope=\"col\"") };
            cell(out, name.0, name.1, &column.head, column.figures);
        }
        out.push_str("</tr>\n</thead>\n");
    }
    out.push_str("<tbody>\n");
    for row in &table.rows {
        out.push_str("<tr>");
        for (text, column) in row.iter().zip(&table.columns) {
            cell(out, "td", "", text, column.figures);
        }
        out.push_str("</tr>\n");
    }
    out.push_str("</tbody>\n</table>\n");
}

fn style() -> String {
    let [ink, soft, line, accent, paper] = [INK, INK_SOFT, HAIRLINE, ACCENT, PAPER].map(super::palette::Rgb::hex);
    format!(
        "@page {{ margin: 15mm; }}\n\
         body {{ font-family: \"Noto Sans\", system-ui, sans-serif; line-height: 1.4; color: {ink}; background: {paper}; margin: 0; }}\n\
         main, footer {{ max-width: 52rem; margin: 0 auto; padding: 1rem 1.5rem; }}\n\
         h1 {{ font-size: 1.9rem; line-height: 1.2; margin: 0 0 0.6rem; }}\n\
         h2 {{ font-size: 1.25rem; color: {accent}; margin: 1.6rem 0 0.4rem; break-after: avoid; }}\n\
         h3 {{ font-size: 1rem; margin: 1rem 0 0.3rem; break-after: avoid; }}\n\
         p, ul {{ margin: 0 0 0.6rem; }}\n\
         dl {{ display: grid; grid-template-columns: max-content 1fr; gap: 0.15rem 1.2rem; margin: 0 0 0.8rem; }}\n\
         dt {{ color: {soft}; }}\ndd {{ margin: 0; }}\n\
         table {{ border-collapse: collapse; width: 100%; margin: 0 0 0.8rem; font-variant-numeric: tabular-nums; }}\n\
         th {{ text-align: left; color: {soft}; }}\n\
         th, td {{ padding: 0.25rem 1rem 0.25rem 0; vertical-align: top; border-bottom: 1px solid {line}; }}\n\
         .figures {{ text-align: right; }}\n\
         .small {{ font-size: 0.85rem; color: {soft}; }}\ntable.small {{ color: {ink}; }}\n\
         table.large td {{ font-size: 2rem; font-weight: 700; }}\n\
         figure {{ margin: 0 0 1rem; }}\nfigure svg {{ width: 100%; height: auto; }}\nfigcaption {{ color: {soft}; font-size: 0.85rem; }}\n\
         .fill-in {{ display: flex; gap: 1.5rem; margin-top: 3rem; }}\n\
         .fill-in p {{ flex: 1; border-top: 1px solid {soft}; font-size: 0.85rem; color: {soft}; }}\n\
         .page {{ break-after: page; }}\n\
         footer {{ color: {soft}; font-size: 0.85rem; }}\n"
    )
}
