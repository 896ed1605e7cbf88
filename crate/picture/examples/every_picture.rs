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
        close: false,
        title: "Climate, signs of Tern Harbour County".to_owned(),
        unit: "kg CO\u{2082}e/m\u{B2} of face".to_owned(),
        range_label: "thick line: half of the draws; thin line: 90 of 100 draws".to_owned(),
        bars: ALL.map(bar).into(),
    }
}

fn swings() -> SwingsPanel {
    let rows = [("ink laid down, 12 to 30 g/m\u{B2}", 0.2, 0.9), ("signs of one design, 10 to 400", 1.6, -0.4), ("oven exhaust", 0.4, 0.6)];
    SwingsPanel {
        title: "Climate: digital minus screen".to_owned(),
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

/// Fifty quantiles of a skewed difference between `from` and `to`.
fn dots(from: f64, to: f64, same: bool) -> DotsPanel {
    let value = |i: i32| {
        let p = (f64::from(i) + 0.5) / 50.0;
        let bent = 0.5 + 4.0 * (p - 0.5) * (p - 0.5) * (p - 0.5);
        from + (to - from) * (0.7 * bent + 0.3 * p * p)
    };
    DotsPanel {
        title: "Climate: film less digital, order of Tern Harbour County".to_owned(),
        unit: "kg CO\u{2082}e/m\u{B2} of face".to_owned(),
        values: (0..50).map(value).collect(),
        less: DotsSide { label: "film loads less".to_owned(), look: FILM },
        more: DotsSide { label: "digital-uv loads less".to_owned(), look: DIGITAL_UV },
        of_label: "of".to_owned(),
        same: same.then(|| DotsBand { ends: (-0.15, 0.15), label: "about the same: within 0.15 kg CO\u{2082}e/m\u{B2}".to_owned() }),
    }
}

/// Signs of one design on an axis of three decades: 1, 10, 100, 1000; positions by the table.
const SIGNS: [(f64, f64); 10] = [
    (1.0, 0.0),
    (2.0, 0.1003),
    (5.0, 0.233),
    (10.0, 0.3333),
    (20.0, 0.4337),
    (50.0, 0.5663),
    (100.0, 0.6667),
    (200.0, 0.767),
    (500.0, 0.8997),
    (1000.0, 1.0),
];

fn along(i: usize) -> Along {
    Along { value: SIGNS[i].0, at: SIGNS[i].1 }
}

fn crossing(which: &str) -> CrossingPanel {
    let curve = |(label, look, set_up, each): (&str, Look, f64, f64)| Curve {
        label: label.to_owned(),
        look,
        points: (2..10).map(|i| CrossingPoint { input: along(i), load: set_up / SIGNS[i].0 + each }).collect(),
    };
    let mut curves: Vec<Curve> = [
        ("screen", SCREEN, 45.0, 2.6),
        ("digital", DIGITAL, 2.0, 4.3),
        ("film", FILM, 3.0, 3.4),
        ("digital-resin", DIGITAL_RESIN, 1.0, 4.2),
    ]
    .map(curve)
    .into();
    let at = |value: f64, at: f64| Along { value, at };
    let mut crossings = vec![Crossing {
        text: "screen loads less from 26 signs; in 90 of 100 draws from 12 to 61".to_owned(),
        input: at(26.0, 0.4716),
        band: Some((at(12.0, 0.3597), at(61.0, 0.5951))),
    }];
    match which {
        "crossing-none" => (curves, crossings) = (curves.split_off(1), Vec::new()),
        "crossing-many" => {
            crossings[0].text = "26 (12 to 61): digital, screen".to_owned();
            crossings.push(Crossing { text: "52: film, screen".to_owned(), input: at(52.0, 0.572), band: None });
        }
        _ => curves.truncate(2),
    }
    let tick = |(i, (value, at)): (usize, (f64, f64))| InputTick { text: if i % 3 == 0 { value.to_string() } else { String::new() }, at };
    CrossingPanel {
        title: "Climate against quantity, signs of Tern Harbour County".to_owned(),
        unit: "kg CO\u{2082}e/m\u{B2} of face".to_owned(),
        input: InputAxis {
            title: "signs of one design in one set-up".to_owned(),
            ticks: SIGNS.into_iter().enumerate().map(tick).collect(),
        },
        curves,
        crossings,
        none_label: "No crossing from 5 to 1000 signs: film loads less than digital at every quantity.".to_owned(),
        own: Some(OwnMark { label: "this order: 100".to_owned(), input: at(100.0, 0.6667) }),
    }
}

fn map(columns: usize) -> MapPanel {
    let side = |letter: &str, name: &str, look| MapSide {
        letter: letter.to_owned(),
        less_label: format!("{name} loads less"),
        only_label: format!("only {name} can make them"),
        look,
    };
    let rows = ["1", "2", "3", "4", "full colour"];
    let cell = |column: usize, row: usize| match (column, row) {
        (_, 4) => MapCell::Only(1),
        (column, row) if column == row + 2 => MapCell::Unclear,
        (column, row) if column > row + 2 => MapCell::Less(0),
        (0, 0) => MapCell::Less(2),
        _ => MapCell::Less(1),
    };
    MapPanel {
        title: "Climate over signs and colours, Tern Harbour County".to_owned(),
        across: MapAxis {
            title: "signs of one design in one set-up".to_owned(),
            ticks: ["1", "3", "10", "30", "100", "300", "1\u{202F}000", "3\u{202F}000"][..columns]
                .iter()
                .map(|t| (*t).to_owned())
                .collect(),
        },
        up: MapAxis { title: "printed colours of the face".to_owned(), ticks: rows.map(str::to_owned).into() },
        sides: vec![side("S", "screen", SCREEN), side("D", "digital", DIGITAL), side("U", "screen-uv", SCREEN_UV)],
        cells: (0..5).map(|row| (0..columns).map(|column| cell(column, row)).collect()).collect(),
        unclear_label: "no clear difference".to_owned(),
        none_label: "none can make them".to_owned(),
        own: Some((3, 1)),
        own_label: "this order".to_owned(),
    }
}

fn stages() -> StagesPanel {
    let alternative = |letter: &str, label: &str, look| StagesAlternative { letter: letter.to_owned(), label: label.to_owned(), look };
    let stage = |label: &str, values: [f64; 4]| Stage {
        label: label.to_owned(),
        loads: values.map(|value| StageLoad { value, text: if value == 0.0 { "0".to_owned() } else { format!("{value:.3}") } }).into(),
    };
    StagesPanel {
        title: "Climate by stage, Tern Harbour County".to_owned(),
        unit: "kg CO\u{2082}e/m\u{B2} of face".to_owned(),
        alternatives: vec![
            alternative("S", "screen", SCREEN),
            alternative("U", "screen-uv", SCREEN_UV),
            alternative("F", "film", FILM),
            alternative("R", "digital-resin", DIGITAL_RESIN),
        ],
        stages: vec![
            stage("materials", [2.1, 2.05, 2.9, 2.4]),
            stage("screens, plates and other work before printing", [0.31, 0.3, 0.004, 0.0]),
            stage("imaging", [0.11, 0.25, 0.02, 0.9]),
            stage("drying", [0.42, 0.08, 0.0, 0.3]),
            stage("clean-up", [0.09, 0.05, 0.0, 0.02]),
        ],
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
    for (name, panel) in [("dots", dots(-2.6, 0.7, false)), ("dots-same", dots(-1.1, 1.3, true)), ("dots-one-side", dots(3.0, 3.4, false))]
    {
        write(name, |w| dots_height(&panel, w), |size, theme| dots_svg(&panel, size, theme));
    }
    for name in ["crossing", "crossing-none", "crossing-many"] {
        let panel = crossing(name);
        write(name, |w| crossing_height(&panel, w), |size, theme| crossing_svg(&panel, size, theme));
    }
    for (name, panel) in [("map", map(8)), ("map-small", map(4))] {
        write(name, |w| map_height(&panel, w), |size, theme| map_svg(&panel, size, theme));
    }
    let panel = stages();
    write("stages", |w| stages_height(&panel, w), |size, theme| stages_svg(&panel, size, theme));
    let panel = swings();
    write("swings", |w| swings_height(&panel, w), |size, theme| swings_svg(&panel, size, theme));
}
