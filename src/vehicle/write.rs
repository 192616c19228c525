//! Writing a template, for one that a user has changed.

use super::schema::TemplateFile;
use super::template::Template;
use ron::extensions::Extensions;
use ron::ser::PrettyConfig;

/// The explanation at the head of every template file, as comment lines.
const HEAD: &str = include_str!("format.txt");

impl Template {
    /// The template as the text of a file: the name and the format in a comment, then the data; reading it gives an equal one.
    pub fn to_ron(&self) -> String {
        let name = self.name.replace(['\n', '\r'], " ");
        format!("// {name}.\n{HEAD}{}\n", data(&self.file))
    }
}

/// The data alone. A template file holds only numbers, texts, lists and maps with text keys, which RON can always write.
fn data(file: &TemplateFile) -> String {
    let options = ron::Options::default().with_default_extension(Extensions::IMPLICIT_SOME);
    // Depth 3 puts a panel, a line or a feature on one line each.
    let pretty = PrettyConfig::new().depth_limit(2).new_line("\n".to_owned());
    options.to_string_pretty(file, pretty).unwrap_or_default()
}
