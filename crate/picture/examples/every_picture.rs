//! Writes every picture as SVG to `target/pictures/`, on every ground and at three widths, so
//! that they can be looked at: `cargo run -p faceload-picture --example every_picture`. The
//! numbers are invented for the sign shop of Tern Harbour County.
use faceload_picture::*;
use std::fs;

const SCREEN: Look = Look { colour: Colour::SCREEN_PRINTING, mark: Mark::Plain };
const SCREEN_UV: Look = Look { colour: Colour::SCREEN_PRINTING, mark: Mark::Hatched };
const FILM: Look = Look { colour: Colour::FILM, mark: Mark::Plain };
const DIRECT: Look = Look { colour: Colour::DIRECT_APPLIED, mark: Mark::Plain };
const DIGITAL: Look = Look { colour: Colour::DIGITAL, mark: Mark::Plain };
const DIGITAL_UV: Look = Look { colour: Colour::DIGITAL, mark: Mark::Hatched };
const DIGITAL_RESIN: Look = Look { colour: Colour::DIGITAL, mark: Mark::Dashed };

/// The alternatives the pictures show.
const ALL: [(&str, Look, f64); 6] = [
    ("screen", SCREEN, 3.1),
    ("screen-uv", SCREEN_UV, 2.6),
    ("film", FILM, 3.5),
    ("direct", DIRECT, 3.8),
    ("digital", DIGITAL, 4.4),
    ("digital-resin", DIGITAL_RESIN, 0.9),
];

fn loads(intervals: bool) -> LoadsPanel {
    let bar = |(label, look, value): (&str, Look, f64)| Bar {
        label: label.to_owned(),
        value,
        text: format!("{value:.1}"),
        range: intervals
            .then_some(Interval { half: (0.9 * value, 1.13 * value), ninety: (0.75 * value, 1.4 * value) })
            .filter(|_| label != "direct"),
        look,
    };
    LoadsPanel {
        title: "Climate, signs of Tern Harbour County".to_owned(),
        unit: "kg CO\u{2082}e/m\u{B2} of face".to_owned(),
        range_label: "thick line: half of the draws; thin line: 90 of 100 draws".to_owned(),
        bars: ALL.map(bar).into(),
    }
}

fn swings() -> SwingsPanel {
    let rows = [("ink laid down, 12 to 30 g/m\u{B2}", 0.2, 0.9), ("signs of one design, 10 to 400", 1.6, -0.4), ("oven exhaust", 0.4, 0.6)];
    SwingsPanel {
        title: "Climate: digital less screen".to_owned(),
        unit: "kg CO\u{2082}e/m\u{B2} of face".to_owned(),
        centre: 0.5,
        less_label: "digital loads less".to_owned(),
        more_label: "digital loads more".to_owned(),
        turns_label: "turns it".to_owned(),
        key: SwingsKey {
            low: "input at its 5 % point".to_owned(),
            high: "input at its 95 % point".to_owned(),
            centre: "every input as the order has it".to_owned(),
        },
        rows: rows.map(|(label, low, high)| Swing { label: label.to_owned(), low, high, crosses: low * high < 0.0 }).into(),
    }
}

fn write(name: &str, height: impl Fn(u32) -> u32, svg: impl Fn((u32, u32), Theme) -> Result<String, Refused>) {
    for (theme, word) in [(Theme::Light, "light"), (Theme::Dark, "dark"), (Theme::Paper, "paper")] {
        for width in [720, 390, 320] {
            let text = svg((width, height(width)), theme).unwrap_or_else(|refused| panic!("{name}: {refused}"));
            fs::write(format!("target/pictures/{name}-{word}-{width}.svg"), text).expect("target/pictures can be written");
        }
    }
}

fn main() {
    fs::create_dir_all("target/pictures").expect("target/pictures can be made");
    for (name, panel) in [("loads", loads(false)), ("loads-intervals", loads(true))] {
        write(name, |w| loads_height(&panel, w), |size, theme| loads_svg(&panel, size, theme));
    }
    let panel = swings();
    write("swings", |w| swings_height(&panel, w), |size, theme| swings_svg(&panel, size, theme));
}
