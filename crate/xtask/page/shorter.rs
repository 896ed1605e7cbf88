//! A script or a style without what only its writers need: comments that stand on lines of their own, and the space in
//! front of a line. Nothing inside a line is touched, so no string, pattern or number can be.

/// What is put in, and how its comments are written.
#[derive(Clone, Copy, PartialEq)]
pub enum Written {
    /// JavaScript: `//` to the end of a line, too.
    Script,
    /// CSS.
    Style,
}

/// The text without those; as it is where a string may go on over a line's end.
pub fn shorter(text: &str, written: Written) -> String {
    if text.lines().any(|line| line.ends_with('\\') || !line.matches('`').count().is_multiple_of(2)) {
        return text.to_owned();
    }
    let mut out = String::with_capacity(text.len());
    let mut inside = false;
    for line in text.lines().map(str::trim) {
        if inside || line.starts_with("/*") {
            // What follows a comment on its line stays, so the whole line does.
            match line.find("*/") {
                Some(end) if end + 2 == line.len() => inside = false,
                Some(_) => return text.to_owned(),
                None => inside = true,
            }
        } else if !line.is_empty() && (written == Written::Style || !line.starts_with("//")) {
            out.push_str(line);
            out.push('\n');
        }
    }
    out
}

#[cfg(test)]
mod tests {
    use super::{Written, shorter};

    #[test]
    fn lines_keep_all_but_the_space_around_them() {
        let text = "// What it is.\n(() => {\n  /** One. */\n  const a = 'x // y';  \n\n  /*\n   * Two\n   */\n  return a; // why\n})();\n";
        assert_eq!(shorter(text, Written::Script), "(() => {\nconst a = 'x // y';\nreturn a; // why\n})();\n");
    }

    #[test]
    fn two_strokes_begin_no_comment_in_a_style() {
        assert_eq!(shorter("a {\n  /* b */\n  //c\n}\n", Written::Style), "a {\n//c\n}\n");
    }

    #[test]
    fn text_whose_strings_go_over_lines_stays_as_it_is() {
        for text in ["const a = `\n  // b\n`;\n", "const a = 'b\\\n  // c';\n", "  /* a */ b();\n", "/*\n a */ b();\n"] {
            assert_eq!(shorter(text, Written::Script), text);
        }
    }
}
