//! Draws from nothing, with kept values, and after an edit.
use faceload_core::analysis::{Design, Draws, Kept, Settings};
use faceload_core::comparison::compare;
use faceload_core::factors::Tables;
use faceload_core::load::Per;
use faceload_core::order::{Boundary, Document, Order, demo};
use std::time::Instant;

fn main() -> Result<(), String> {
    let tables = Tables::embedded().map_err(|faults| faults[0].to_string())?;
    for name in ["stop", "county"] {
        let demo = demo::find(name).ok_or("no such demo")?;
        let document = Document::json(demo.name, demo.text).map_err(|fault| fault.to_string())?;
        let order = Order::read(document, &tables).map_err(|faults| faults[0].to_string())?;
        let comparison = compare(&tables, &order, Per::M2, Boundary::Face).map_err(|fault| format!("{fault:?}"))?;
        for design in [Design::Plain, Design::LatinHypercube] {
            let settings = Settings { design, ..Settings::default() };
            let mut times = (f64::MAX, f64::MAX);
            let mut inputs = 0;
            for _ in 0..9 {
                let mut kept = Kept::default();
                let start = Instant::now();
                let draws = Draws::make(&comparison, &[], settings, &mut kept, |_| true);
                let nothing = start.elapsed().as_secs_f64() * 1e3;
                let start = Instant::now();
                let again = Draws::make(&comparison, &[], settings, &mut kept, |_| true);
                let edit = start.elapsed().as_secs_f64() * 1e3;
                times = (times.0.min(nothing), times.1.min(edit));
                inputs = draws.inputs.max(again.inputs);
            }
            println!("{name} {}: {inputs} inputs, from nothing {:.2} ms, after an edit {:.2} ms", design.name(), times.0, times.1);
        }
    }
    Ok(())
}
