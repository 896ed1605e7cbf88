//! A map over two inputs: a grid of cells, each saying which alternative loads less there, that
//! it is unclear, that only one can make the signs, or that none can. A cell has the colour and
//! mark of its alternative and its letter, so that it reads without colour; the order's own cell
//! is framed, and a key says in words what each kind of cell means.
use crate::axis::{LINE, apart};
use crate::bar;
use crate::behind::{Behind, BehindRow, Cell, Column};
use crate::fine::Fine;
use crate::key::Key;
use crate::look::{Look, Theme};
use crate::refused::{Refused, counted, roomy};
use crate::rows::Rows;
use crate::sheet::{MARGIN, Place, SMALL, Sheet, Side, Type, small};
use crate::svg::svg;
use crate::text_width::{fitted, lines, width};
use plotters_backend::DrawingBackend;

/// What the picture shows: one indicator over two inputs.
#[derive(Clone, Debug, PartialEq)]
pub struct MapPanel {
    /// The indicator and the two inputs.
    pub title: String,
    /// The input that grows to the right: a tick for each column.
    pub across: MapAxis,
    /// The input that grows upwards: a tick for each row, the lowest first.
    pub up: MapAxis,
    /// The alternatives.
    pub sides: Vec<MapSide>,
    /// The cells, row by row, the lowest row first.
    pub cells: Vec<Vec<MapCell>>,
    /// What an unclear cell means.
    pub unclear_label: String,
    /// What a cell means that none can make.
    pub none_label: String,
    /// Column and row of the order's own cell, where it is on the map.
    pub own: Option<(usize, usize)>,
    /// What the frame means.
    pub own_label: String,
}

/// One axis of the map.
#[derive(Clone, Debug, PartialEq)]
pub struct MapAxis {
    /// The input and its unit.
    pub title: String,
    /// Its values as printed.
    pub ticks: Vec<String>,
}

/// One alternative.
#[derive(Clone, Debug, PartialEq)]
pub struct MapSide {
    /// The letter in its cells.
    pub letter: String,
    /// What it means that it loads less.
    pub less_label: String,
    /// What it means that only it can make the signs.
    pub only_label: String,
    /// Colour and mark.
    pub look: Look,
}

/// What a cell says; an alternative by its place among the sides.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum MapCell {
    /// This one loads less.
    Less(usize),
    /// Only this one can make the signs.
    Only(usize),
    /// No clear difference.
    Unclear,
    /// None can make the signs.
    None,
}

/// Width a cell has at most and at least, and heights of cells, wide and narrow.
const WIDEST: f64 = 84.0;
const NARROWEST: f64 = 16.0;
const HEIGHTS: (f64, f64) = (34.0, 28.0);
/// Px between cells: the frame of the order's own cell runs there.
const GAP: f64 = 4.0;
/// Size of a cell in the key.
const SAMPLE: (f64, f64) = (26.0, 15.0);
/// Lines of numbers under the columns, at most.
const MOST_LINES: usize = 3;
/// Height of the strip at the foot of a cell that only one can make.
const STRIP: f64 = 5.0;

impl MapPanel {
    /// What a cell means, in words of the panel.
    fn words(&self, cell: MapCell) -> &str {
        match cell {
            MapCell::Less(side) => self.sides.get(side).map_or("", |s| &s.less_label),
            MapCell::Only(side) => self.sides.get(side).map_or("", |s| &s.only_label),
            MapCell::Unclear => &self.unclear_label,
            MapCell::None => &self.none_label,
        }
    }

    /// The table behind the picture: a row for each cell, in the order given.
    pub fn behind(&self) -> Behind {
        let row = |up: &String, across: &String, cell: &MapCell| BehindRow {
            label: up.clone(),
            cells: vec![Cell::Words(across.clone()), Cell::Words(self.words(*cell).to_owned())],
        };
        let rows = self.up.ticks.iter().zip(&self.cells);
        Behind {
            title: self.title.clone(),
            unit: String::new(),
            columns: vec![Column::Across, Column::LoadsLess],
            rows: rows
                .flat_map(|(up, cells)| self.across.ticks.iter().zip(cells).map(move |(across, cell)| row(up, across, cell)))
                .collect(),
        }
    }

    /// The kinds of cell there are: those of the sides in their order, the rest after them.
    fn kinds(&self) -> Vec<MapCell> {
        let sides = 0..self.sides.len();
        let all = sides.clone().map(MapCell::Less).chain(sides.map(MapCell::Only)).chain([MapCell::Unclear, MapCell::None]);
        all.filter(|kind| self.cells.iter().flatten().any(|cell| cell == kind)).collect()
    }

    fn checked(&self) -> Result<(), Refused> {
        let (columns, rows) = (self.across.ticks.len(), self.up.ticks.len());
        if columns == 0 || rows == 0 {
            return Err(Refused::Empty(self.title.clone()));
        }
        counted(&self.up.title, self.cells.len(), rows)?;
        for (tick, cells) in self.up.ticks.iter().zip(&self.cells) {
            counted(tick, cells.len(), columns)?;
        }
        let sides = self.sides.len();
        let strange = |cell: &&MapCell| matches!(cell, MapCell::Less(side) | MapCell::Only(side) if *side >= sides);
        if let Some(MapCell::Less(side) | MapCell::Only(side)) = self.cells.iter().flatten().find(strange) {
            return Err(Refused::Count { label: self.title.clone(), came: side + 1, wanted: sides });
        }
        match self.own {
            Some((column, _)) if column >= columns => counted(&self.own_label, column + 1, columns),
            Some((_, row)) if row >= rows => counted(&self.own_label, row + 1, rows),
            _ => Ok(()),
        }
    }
}

/// The picture laid out.
struct Laid {
    title: Rows,
    up: Vec<String>,
    across: Vec<String>,
    /// The numbers under the columns, line by line: middle and text.
    ticks: Vec<Vec<(f64, String)>>,
    /// Left edge of the grid, and a cell with the gap around it.
    left: f64,
    cell: (f64, f64),
    bottom: f64,
    key: Key,
}

impl Laid {
    fn new(panel: &MapPanel, sheet: u32) -> Self {
        let title = Rows::title(&panel.title, sheet);
        let room = title.right - MARGIN;
        let ticks = panel.up.ticks.iter().map(|t| width(t, SMALL, false)).fold(0.0, f64::max);
        let left = (MARGIN + ticks.min(0.3 * room) + 8.0).ceil();
        let up = lines(&format!("\u{2191} {}", panel.up.title), SMALL, false, room, 3);
        let across = lines(&format!("{} \u{2192}", panel.across.title), SMALL, false, title.right - left, 3);
        let wide = ((title.right - left) / panel.across.ticks.len().max(1) as f64).floor().min(WIDEST);
        let cell = (wide, if title.narrow { HEIGHTS.1 } else { HEIGHTS.0 });
        let top = title.bottom + LINE * up.len() as f64 + 6.0;
        let bottom = top + cell.1 * panel.up.ticks.len() as f64;
        let own = panel.own.map(|_| panel.own_label.as_str());
        let words = panel.kinds().into_iter().map(|kind| panel.words(kind)).chain(own);
        let key = Key::new(words, SAMPLE, (MARGIN, title.right));
        let mut laid = Self { title, up, across, ticks: Vec::new(), left, cell, bottom, key };
        laid.under_columns(&panel.across.ticks);
        laid
    }

    /// A cell without the gap around it, rows from the lowest.
    fn place(&self, column: usize, row: usize) -> Place {
        Place {
            x: self.left + self.cell.0 * column as f64 + GAP / 2.0,
            y: self.bottom - self.cell.1 * (row + 1) as f64 + GAP / 2.0,
            width: self.cell.0 - GAP,
            height: self.cell.1 - GAP,
        }
    }

    /// Lays the numbers under the columns: those that would touch stand in the next line.
    fn under_columns(&mut self, ticks: &[String]) {
        let mut left: Vec<(f64, &str)> =
            ticks.iter().enumerate().map(|(i, t)| (self.left + self.cell.0 * (i as f64 + 0.5), t.as_str())).collect();
        while !left.is_empty() && self.ticks.len() < MOST_LINES {
            let line = apart(left.iter().copied(), self.title.right + MARGIN, 5.0);
            let mut kept = line.iter().map(|(_, text)| text.as_str()).peekable();
            left.retain(|(_, text)| kept.next_if_eq(text).is_none());
            self.ticks.push(line);
        }
    }

    fn ticks_bottom(&self) -> f64 {
        self.bottom + LINE * self.ticks.len() as f64 + 2.0
    }

    /// Where the key begins.
    fn under(&self) -> f64 {
        self.ticks_bottom() + LINE * self.across.len() as f64 + 6.0
    }
}

/// The height of the picture at a width, in CSS px.
pub fn map_height(panel: &MapPanel, width: u32) -> u32 {
    let laid = Laid::new(panel, width);
    (laid.under() + laid.key.height() + 4.0).ceil() as u32
}

/// Where the cells are, row by row as given: for what lies over the picture.
pub fn map_places(panel: &MapPanel, width: u32) -> Vec<Place> {
    let laid = Laid::new(panel, width);
    let rows = 0..panel.up.ticks.len();
    rows.flat_map(|row| (0..panel.across.ticks.len()).map(move |column| (column, row))).map(|(c, r)| laid.place(c, r)).collect()
}

/// Draws the panel; the backend is as high as [`map_height`] says, or higher.
pub fn draw_map<DB: DrawingBackend>(backend: Fine<DB>, panel: &MapPanel, theme: Theme) -> Result<(), Refused> {
    panel.checked()?;
    let (wide, _) = backend.size_css();
    roomy(backend.size_css(), map_height(panel, wide))?;
    let laid = Laid::new(panel, wide);
    if laid.cell.0 < NARROWEST {
        let wanted = ((laid.title.right - laid.left) / NARROWEST) as usize;
        return Err(Refused::Count { label: panel.across.title.clone(), came: panel.across.ticks.len(), wanted });
    }
    let sheet = laid.title.sheet(backend, theme)?;
    for (row, cells) in panel.cells.iter().enumerate() {
        for (column, kind) in cells.iter().enumerate() {
            cell(&sheet, panel, (*kind, laid.place(column, row)), theme)?;
        }
    }
    if let Some((column, row)) = panel.own {
        frame(&sheet, laid.place(column, row), theme)?;
    }
    words(&sheet, panel, &laid, theme)?;
    let kinds = panel.kinds();
    laid.key.draw(&sheet, laid.under(), theme, |i, x, y| {
        let place = Place { x, y: y - SAMPLE.1 / 2.0, width: SAMPLE.0, height: SAMPLE.1 };
        match kinds.get(i) {
            Some(kind) => cell(&sheet, panel, (*kind, place), theme),
            None => frame(&sheet, Place { x: x + 2.0, width: SAMPLE.0 - 4.0, y: place.y + 2.0, height: SAMPLE.1 - 4.0 }, theme),
        }
    })?;
    sheet.done()
}

/// One cell: filled with a letter on a disc of the ground; a strip under a letter; a small dot;
/// a short level line.
fn cell<DB: DrawingBackend>(sheet: &Sheet<DB>, panel: &MapPanel, (kind, at): (MapCell, Place), theme: Theme) -> Result<(), Refused> {
    let (x, y) = (at.x + at.width / 2.0, at.y + at.height / 2.0);
    let set = Type { size: SMALL, bold: true, colour: theme.text() };
    match kind {
        MapCell::Less(side) => {
            bar::draw(sheet, at, panel.sides[side].look)?;
            sheet.disc((x, y), (at.height.min(at.width) / 2.0 - 0.5).min(9.5), theme.ground())?;
            sheet.text(&fitted(&panel.sides[side].letter, SMALL, true, at.width), (x, y), Side::Middle, set)
        }
        MapCell::Only(side) => {
            let strip = Place { y: at.y + at.height - STRIP, height: STRIP, ..at };
            sheet.filled(strip, panel.sides[side].look.colour)?;
            sheet.text(&fitted(&panel.sides[side].letter, SMALL, true, at.width), (x, y - STRIP / 2.0), Side::Middle, set)
        }
        MapCell::Unclear => sheet.disc((x, y), 2.0, theme.quiet()),
        MapCell::None => sheet.level(y, x - 5.0, x + 5.0, 1.0, theme.quiet()),
    }
}

/// The frame of the order's own cell, in the gap around it.
fn frame<DB: DrawingBackend>(sheet: &Sheet<DB>, at: Place, theme: Theme) -> Result<(), Refused> {
    let (left, top, right, bottom) = (at.x - 1.5, at.y - 1.5, at.x + at.width + 1.5, at.y + at.height + 1.5);
    sheet.line(&[(left, top), (right, top), (right, bottom), (left, bottom), (left, top), (right, top)], 2.5, theme.text())
}

/// Titles and ticks of both axes.
fn words<DB: DrawingBackend>(sheet: &Sheet<DB>, panel: &MapPanel, laid: &Laid, theme: Theme) -> Result<(), Refused> {
    for (i, line) in laid.up.iter().enumerate() {
        sheet.text(line, (MARGIN, laid.title.bottom + LINE * (i as f64 + 0.5)), Side::Right, small(theme))?;
    }
    for (row, tick) in panel.up.ticks.iter().enumerate() {
        let at = laid.place(0, row);
        let text = fitted(tick, SMALL, false, laid.left - 8.0 - MARGIN);
        sheet.text(&text, (laid.left - 6.0, at.y + at.height / 2.0), Side::Left, small(theme))?;
    }
    for (i, ticks) in laid.ticks.iter().enumerate() {
        for (x, text) in ticks {
            sheet.text(text, (*x, laid.bottom + LINE * (i as f64 + 0.5) + 2.0), Side::Middle, small(theme))?;
        }
    }
    for (i, line) in laid.across.iter().enumerate() {
        sheet.text(line, (laid.left + GAP / 2.0, laid.ticks_bottom() + LINE * (i as f64 + 0.5)), Side::Right, small(theme))?;
    }
    Ok(())
}

/// The panel as SVG text.
pub fn map_svg(panel: &MapPanel, size_css: (u32, u32), theme: Theme) -> Result<String, Refused> {
    svg(&panel.title, size_css, |backend| draw_map(backend, panel, theme))
}
