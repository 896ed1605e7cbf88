//! What the page is made of, and what is refused.

use super::{Page, SCRIPT, STYLE, WORKER, between, name_of_file};
use crate::page::policy::hash;

fn page(lines: &[&str]) -> Result<String, String> {
    let mut page = Page::default();
    for line in lines {
        page.plain(line)?;
    }
    page.style("a.css", "body { margin: 0 }")?;
    page.script("a.js", "start();")?;
    page.script("b.js", "one();")?;
    page.script("c.js", "two('</script>');")?;
    page.glue = "glue".to_owned();
    page.worker = "worker".to_owned();
    page.finish(b"wasm")
}

#[test]
fn policy_stands_right_after_the_character_set_and_names_what_is_inside() {
    let html = page(&["<meta charset=\"utf-8\">"]).expect("a page");
    let start = "<meta charset=\"utf-8\">\n<meta http-equiv=\"Content-Security-Policy\"";
    assert!(html.starts_with(start), "{html}");
    for text in ["start();\n", "glue", "one();\ntwo('</script>');\n", "body { margin: 0 }\n"] {
        assert!(html.contains(&hash(text)), "{text}");
    }
}

#[test]
fn what_is_packed_opens_to_the_same_bytes() {
    use crate::page::letters::tests::read;
    let html = page(&["<meta charset=\"utf-8\">"]).expect("a page");
    let (_, rest) = html.split_once("data-packed=\"deflate-raw\" data-size=\"").expect("the element");
    let (size, rest) = rest.split_once("\" data-parts=\"").expect("its size");
    let (parts, rest) = rest.split_once("\">").expect("its parts");
    let (packed, _) = rest.split_once('<').expect("its end");
    let packed = read(packed, size.parse().expect("a number"));
    let opened = miniz_oxide::inflate::decompress_to_vec(&packed).expect("deflated");
    assert_eq!(parts, "glue:4 worker:6 scripts:25 wasm:4");
    assert_eq!(opened, b"glueworkerone();\ntwo('</script>');\nwasm");
}

#[test]
fn no_character_set_no_page() {
    let reason = page(&["<title>x</title>"]).expect_err("no place for the policy");
    assert!(reason.contains("charset"), "{reason}");
}

#[test]
fn what_would_break_out_is_refused() {
    let mut page = Page::default();
    for text in ["'</script>'", "'</SCRIPT'", "'<!--'", "'<script'"] {
        let reason = page.script("a.js", text).expect_err(text);
        assert!(reason.starts_with("a.js: `<"), "{reason}");
    }
    assert!(page.style("a.css", "@import 'b.css'").is_err());
    for line in ["<p style=\"x\">", "<script>go()</script>", "<a href=\"javascript:x\">"] {
        assert!(page.plain(line).is_err(), "{line}");
    }
    assert!(page.plain("<p class=\"lines\">").is_ok());
}

#[test]
fn tags_name_one_file_beside_the_index() {
    assert_eq!(between("<script src=\"a.js\"></script>", SCRIPT), Some("a.js"));
    assert_eq!(between("<link rel=\"stylesheet\" href=\"a.css\">", STYLE), Some("a.css"));
    assert_eq!(between("<script type=\"text/plain\" src=\"w.js\"></script>", WORKER), Some("w.js"));
    assert_eq!(between("<script defer src=\"a.js\"></script>", SCRIPT), None);
    for name in ["../a.js", "https://a.js", ""] {
        assert!(name_of_file(name).is_err(), "{name}");
    }
}
