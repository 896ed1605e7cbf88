//! Floor 5. Owns: the routes, one file each: can a job be made, by which steps, in which order.
//! Never: arithmetic that a second route could share.

mod base;
mod digital;
mod direct_applied;
mod overlay_film;
mod screen_printing;

use crate::factors::Tables;
use crate::inventory::{Activity, Book, Flow, Flows, Formula, Layout, What, Work};
use crate::order::{Alternative, Job, Order, OrderFault, RouteName};
use crate::quantity::{AirFlow, Mass};
use crate::step::{MESH_ROWS, Step, theoretical_volume};

/// A way to make a sign face.
pub trait Route {
    /// Its name.
    fn name(&self) -> RouteName;
    /// What a reader calls it.
    fn label(&self) -> &'static str;
    /// How it goes, in a sentence.
    fn story(&self) -> &'static str;
    /// The job as the route makes it, or why it cannot.
    fn work<'a>(&self, job: &'a Job, layout: &'a Layout) -> Result<Work<'a>, Reason>;
    /// Its steps, in order.
    fn steps(&self, order: &Order, alternative: &Alternative) -> Vec<Box<dyn Step>>;
    /// Why no shop would make a job so, though it can be computed.
    fn unusual(&self, _: &Work<'_>) -> Option<&'static str> {
        None
    }
    /// Hours that the order waits for prints of so many colours, beside the work.
    fn waiting(&self, _: &Book, _: &Alternative, _: f64) -> f64 {
        0.0
    }
    /// Where solvent evaporates into an air flow: what is called, the air, the solvent's label.
    fn exhausts(&self, book: &Book, alternative: &Alternative) -> Vec<(&'static str, AirFlow)>;
}

/// Every route.
pub const ROUTES: [&dyn Route; 4] =
    [&screen_printing::ScreenPrinting, &overlay_film::OverlayFilm, &direct_applied::DirectApplied, &digital::Digital];

/// The route of that name.
pub fn route(name: RouteName) -> &'static dyn Route {
    ROUTES.iter().copied().find(|route| route.name() == name).unwrap_or(ROUTES[0])
}

/// Why a route cannot make a job.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Reason {
    /// The order says so.
    Excluded(String),
    /// The face is larger than the table.
    Table,
    /// No roll in stock is wide enough.
    Roll,
    /// Two colours exist only as sheeting.
    TwoBases,
    /// Nothing is printed.
    NothingPrinted,
    /// More film colours than a face takes.
    FilmColours,
    /// White would have to be laid on a coloured base.
    WhiteFilm,
    /// Copy is not white on one dark ground.
    LightCopy,
}

/// The book of an alternative: a mesh that the shop knows replaces the tables' volumes of ink.
pub fn open_book(tables: &Tables, order: &Order, alternative: &Alternative) -> Result<Book, Vec<OrderFault>> {
    let mut book = Book::open(tables, order, alternative)?;
    if let Some(mesh) = alternative.mesh {
        for row in MESH_ROWS {
            book.replace(
                row,
                theoretical_volume(mesh),
                &format!("{}, mesh", alternative.id),
                "open area of the stated mesh times its fabric thickness",
            );
        }
    }
    Ok(book)
}

/// The flows of a route's steps, end of life included, without those for stock.
pub fn flows(order: &Order, alternative: &Alternative, book: &Book) -> Flows {
    let mut flows = Flows::default();
    for step in route(alternative.route).steps(order, alternative) {
        step.flows(book, &mut flows);
    }
    discard(&mut flows);
    flows
}

/// What is on the faces is discarded at the end of their life.
fn discard(flows: &mut Flows) {
    let on_faces: Vec<Flow> = flows.list.iter().filter(|flow| matches!(flow.what, What::OnFace(..)) && !flow.blank).cloned().collect();
    for flow in on_faces {
        if let What::OnFace(material, terms) = flow.what {
            flows.discard(material, Formula::<Mass>::of_terms(terms).into_terms());
        }
    }
}

/// Counts jobs on a route; those it cannot make are left out.
pub fn count<'a>(order: &Order, alternative: &Alternative, layout: &Layout, jobs: impl Iterator<Item = &'a Job>) -> Activity {
    let mut activity = Activity::default();
    let route = route(alternative.route);
    let steps = route.steps(order, alternative);
    for job in jobs {
        if let Ok(work) = route.work(job, layout) {
            activity.made_for_stock(job.line.stock);
            for step in &steps {
                step.count(&work, &mut activity);
            }
        }
    }
    activity
}
