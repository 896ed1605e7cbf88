//! Putting the page together: index.html with its styles, scripts, glue and wasm inside.

use super::shorter::{Written, shorter};
use super::{letters, policy, read};
use std::path::Path;

const CHARSET: &str = "<meta charset=\"utf-8\">";
const STYLE: (&str, &str) = ("<link rel=\"stylesheet\" href=\"", "\">");
const SCRIPT: (&str, &str) = ("<script src=\"", "\"></script>");
/// A script's text as data: a worker is started from it.
const WORKER: (&str, &str) = ("<script type=\"text/plain\" id=\"worker\" src=\"", "\"></script>");
/// What would end a script's element, or open another.
const BREAKS_OUT: [&str; 3] = ["</script", "<script", "<!--"];
/// 10 is the strongest level that miniz_oxide has.
const LEVEL: u8 = 10;

/// The page made from the files of `www`, the glue and the wasm.
pub fn assemble(www: &Path, glue: &str, wasm: &[u8]) -> Result<String, String> {
    let index = text(&www.join("index.html"))?;
    let mut page = Page::default();
    for line in index.lines() {
        let tag = line.trim();
        if let Some(name) = between(tag, STYLE) {
            page.style(&name_of_file(name)?, &text(&www.join(name))?)?;
        } else if let Some(name) = between(tag, SCRIPT) {
            if page.scripts.is_empty() {
                page.data(wasm);
                page.script(" id=\"glue\"", "the glue of wasm-bindgen", glue)?;
            }
            page.script("", &name_of_file(name)?, &text(&www.join(name))?)?;
        } else if let Some(name) = between(tag, WORKER) {
            page.worker(&name_of_file(name)?, &text(&www.join(name))?)?;
        } else {
            page.plain(line)?;
        }
    }
    page.finish()
}

#[derive(Default)]
struct Page {
    html: String,
    scripts: Vec<String>,
    styles: Vec<String>,
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

    fn worker(&mut self, name: &str, text: &str) -> Result<(), String> {
        let text = shorter(text, Written::Script);
        refuse(name, &text, &BREAKS_OUT)?;
        self.html.push_str(&format!("<script type=\"text/plain\" id=\"worker\">{text}</script>\n"));
        Ok(())
    }

    fn script(&mut self, attribute: &str, name: &str, text: &str) -> Result<(), String> {
        let text = shorter(text, Written::Script);
        refuse(name, &text, &BREAKS_OUT)?;
        self.html.push_str(&format!("<script{attribute}>{text}</script>\n"));
        self.scripts.push(text);
        Ok(())
    }

    fn data(&mut self, wasm: &[u8]) {
        let packed = miniz_oxide::deflate::compress_to_vec(wasm, LEVEL);
        let size = packed.len();
        self.html.push_str(&format!("<script type=\"text/plain\" id=\"wasm\" data-packed=\"deflate-raw\" data-size=\"{size}\">"));
        self.html.push_str(&letters::of(&packed));
        self.html.push_str("</script>\n");
    }

    fn finish(self) -> Result<String, String> {
        if self.scripts.is_empty() {
            return Err("index.html: no script asks for the wasm".into());
        }
        let policy = policy::policy(&self.scripts, &self.styles);
        let meta = format!("<meta http-equiv=\"Content-Security-Policy\" content=\"{policy}\">");
        let Some((before, after)) = self.html.split_once(CHARSET) else {
            return Err(format!("index.html: {CHARSET} is missing; the policy follows it"));
        };
        if before.contains("<script") || before.contains("<style") {
            return Err(format!("index.html: {CHARSET} comes before styles and scripts"));
        }
        Ok(format!("{before}{CHARSET}\n{meta}{after}"))
    }
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
