//! What stands round the lines of an invented order file: name, site, six alternatives.

/// The lines as an order file, six alternatives.
pub fn order(lines: &[String]) -> String {
    format!(
        r#"{{
"schema_version":1,
"name":"Tern Harbour County, lines for timing",
"site":{{"electricity":"us.rfcw","heat":"us.natural-gas","degree_days":"2800 K.d"}},
"alternative":[
{{"id":"screen","route":"screen-printing","ink":"solvent","drying":"oven","otherwise":"direct"}},
{{"id":"screen-uv","route":"screen-printing","ink":"uv","drying":"uv","otherwise":"direct"}},
{{"id":"film","route":"overlay-film","otherwise":"digital"}},
{{"id":"direct","route":"direct-applied","otherwise":"digital"}},
{{"id":"digital","route":"digital-printing","ink":"solvent"}},
{{"id":"digital-uv","route":"digital-printing","ink":"uv"}}
],
"line":[
{}
]}}
"#,
        lines.join(",\n")
    )
}
