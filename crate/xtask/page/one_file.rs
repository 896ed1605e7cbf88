//! Putting the page together: index.html with its styles and one script, and all else packed inside.

use super::shorter::{Written, shorter};
use super::{letters, policy, read};
use std::path::Path;

const CHARSET: &str = "<meta charset=\"utf-8\">";
const STYLE: (&str, &str) = ("<link rel=\"stylesheet\" href=\"", "\">");
const SCRIPT: (&str, &str) = ("<script src=\"", "\"></script>");
/// A script's text as data: a worker is started from it.
const WORKER: (&str, &str) = ("<script type=\"text/plain\" src=\"", "\"></script>");
/// What would end a script's element, or open another.
const BREAKS_OUT: [&str; 3] = ["</script", "<script", "<!--"];

/// The page made from the files of `www`, the glue and the wasm.
pub fn assemble(www: &Path, glue: &str, wasm: &[u8]) -> Result<String, String> {
    let index = text(&www.join("index.html"))?;
    let mut page = Page { glue: shorter(glue, Written::Script), ..Page::default() };
    for line in index.lines() {
        let tag = line.trim();
        let file = |name: &str| text(&www.join(name_of_file(name)?));
        if let Some(name) = between(tag, STYLE) {
            page.style(name, &file(name)?)?;
        } else if let Some(name) = between(tag, SCRIPT) {
            page.script(name, &file(name)?)?;
        } else if let Some(name) = between(tag, WORKER) {
            page.worker = shorter(&file(name)?, Written::Script);
        } else {
            page.plain(line)?;
        }
    }
    page.finish(wasm)
}

#[derive(Default)]
struct Page {
    html: String,
    styles: Vec<String>,
    /// The script that stands as it is, and where it does in the text.
    first: Option<(usize, String)>,
    glue: String,
    worker: String,
    /// All other scripts, one after another.
    scripts: String,
}

impl Page {
    fn plain(&mut self, line: &str) -> Result<(), String> {
        let small = line.to_ascii_lowercase();
        for tag in ["<script", "<style", "<link rel=\"stylesheet", " style=", "javascript:"] {
            if small.contains(tag) {
                let line = line.trim();
                return Err(format!(
                    "index.html: `{line}`: a style or script stands alone on its line, as \
                     {}x.css{} or {}x.js{}",
                    STYLE.0, STYLE.1, SCRIPT.0, SCRIPT.1
                ));
            }
        }
        self.html.push_str(line);
        self.html.push('\n');
        Ok(())
    }

    fn style(&mut self, name: &str, text: &str) -> Result<(), String> {
        let text = shorter(text, Written::Style);
        refuse(name, &text, &["</style", "@import", "url(http"])?;
        self.html.push_str(&format!("<style>{text}</style>\n"));
        self.styles.push(text);
        Ok(())
    }

    fn script(&mut self, name: &str, text: &str) -> Result<(), String> {
        let text = shorter(text, Written::Script);
        if self.first.is_some() {
            self.scripts.push_str(&text);
            return Ok(());
        }
        refuse(name, &text, &BREAKS_OUT)?;
        self.first = Some((self.html.len(), text));
        Ok(())
    }

    /// What is packed, as an element of data.
    fn packed(&self, wasm: &[u8]) -> Result<String, String> {
        let parts =
            [("glue", self.glue.as_bytes()), ("worker", self.worker.as_bytes()), ("scripts", self.scripts.as_bytes()), ("wasm", wasm)];
        let named: Vec<String> = parts.iter().map(|(name, bytes)| format!("{name}:{}", bytes.len())).collect();
        let packed = deflated(&parts.map(|(_, bytes)| bytes).concat())?;
        Ok(format!(
            "<script type=\"text/plain\" id=\"packed\" data-packed=\"deflate-raw\" data-size=\"{}\" data-parts=\"{}\">{}</script>\n",
            packed.len(),
            named.join(" "),
            letters::of(&packed)
        ))
    }

    fn finish(mut self, wasm: &[u8]) -> Result<String, String> {
        let Some((place, first)) = self.first.take() else {
            return Err("index.html: no script unpacks the wasm".into());
        };
        let policy = policy::policy(&[&first, &self.glue, &self.scripts], &self.styles.iter().map(String::as_str).collect::<Vec<_>>());
        let meta = format!("<meta http-equiv=\"Content-Security-Policy\" content=\"{policy}\">");
        self.html.insert_str(place, &format!("{}<script>{first}</script>\n", self.packed(wasm)?));
        let Some((before, after)) = self.html.split_once(CHARSET) else {
            return Err(format!("index.html: {CHARSET} is missing; the policy follows it"));
        };
        if before.contains("<script") || before.contains("<style") {
            return Err(format!("index.html: {CHARSET} comes before styles and scripts"));
        }
        Ok(format!("{before}{CHARSET}\n{meta}{after}"))
    }
}

/// As small as deflate gets; a pass more of zopfli gains no thousandth.
fn deflated(bytes: &[u8]) -> Result<Vec<u8>, String> {
    let mut packed = Vec::new();
    let options = zopfli::Options { iteration_count: std::num::NonZeroU64::MIN, ..zopfli::Options::default() };
    zopfli::compress(options, zopfli::Format::Deflate, bytes, &mut packed).map_err(|error| format!("packing: {error}"))?;
    Ok(packed)
}

fn between<'a>(tag: &'a str, (front, back): (&str, &str)) -> Option<&'a str> {
    tag.strip_prefix(front)?.strip_suffix(back).filter(|name| !name.contains('"'))
}

fn name_of_file(name: &str) -> Result<String, String> {
    if name.is_empty() || name.contains(['/', '\\', ':']) {
        return Err(format!("index.html: `{name}` is not the name of a file beside it"));
    }
    Ok(name.to_owned())
}

/// What would end the element early, or reach outside, is refused rather than escaped.
fn refuse(name: &str, text: &str, parts: &[&str]) -> Result<(), String> {
    let small = text.to_ascii_lowercase();
    match parts.iter().find(|part| small.contains(**part)) {
        Some(part) => Err(format!("{name}: `{part}` can't stand inside the page")),
        None => Ok(()),
    }
}

/// A text file with plain line ends: a browser hashes them so.
fn text(path: &Path) -> Result<String, String> {
    let bytes = read(path)?;
    let text = String::from_utf8(bytes).map_err(|_| format!("{}: not UTF-8", path.display()))?;
    Ok(text.replace("\r\n", "\n"))
}

#[cfg(test)]
#[path = "one_file_tests.rs"]
mod tests;
