//! Screen meshes as makers publish them: a 90/cm mesh in three threads (opening, thread and
//! thickness in um, ink volume in cm3/m2, open area in per cent), and a 120/cm mesh whose opening
//! and ink volume are not printed.

use crate::shop::near;
use faceload_core::order::Mesh;
use faceload_core::quantity::Span;
use faceload_core::step::{open_area, theoretical_volume};

fn mesh(opening_nm: i64, thread: i64, fabric: i64) -> Mesh {
    Mesh { opening: Span::nanometres(opening_nm), thread: Span::nanometres(thread * 1000), fabric: Span::nanometres(fabric * 1000) }
}

#[test]
fn ink_volume_follows_from_opening_thread_and_thickness() {
    for (opening, thread, fabric, worked, printed) in [(73, 40, 59, 24.62, 25.0), (65, 48, 72, 23.82, 24.0), (59, 54, 84, 22.90, 23.0)] {
        let mesh = mesh(opening * 1000, thread, fabric);
        near("worked volume, cm3/m2", theoretical_volume(mesh), worked, 0.005);
        near("printed volume, cm3/m2", theoretical_volume(mesh), printed, printed * 0.02);
    }
}

#[test]
fn open_area_follows_from_the_openings_printed() {
    for (opening, thread, percent) in [(73, 40, 42.0), (65, 48, 33.0), (59, 54, 27.0)] {
        near("open area, %", open_area(mesh(opening * 1000, thread, 50)) * 100.0, percent, 0.5);
    }
}

#[test]
fn open_area_follows_from_threads_per_centimetre_within_2_5_points() {
    // Pitch less thread; printed openings are of thread before weaving and stretching.
    for (threads, thread, percent) in [(90, 40, 42.0), (90, 48, 33.0), (90, 54, 27.0), (120, 40, 25.0)] {
        let opening = 10_000_000 / threads - thread * 1000;
        near("open area, %", open_area(mesh(opening, thread, 50)) * 100.0, percent, 2.5);
    }
}

#[test]
fn printed_open_area_times_thickness_gives_the_printed_volume_within_2_percent() {
    // A mesh with the printed open area, by the width of its opening: w = d q/(1 - q), q^2 open.
    for (thread, fabric, percent, printed) in [(40, 59, 42.0_f64, 25.0), (48, 72, 33.0, 24.0), (54, 84, 27.0, 23.0)] {
        let side = (percent / 100.0).sqrt();
        let opening = Span::from_metres(thread as f64 * 1e-6 * side / (1.0 - side));
        near("volume, cm3/m2", theoretical_volume(mesh(opening.count(), thread, fabric)), printed, printed * 0.02);
    }
}

#[test]
fn a_mesh_stated_by_the_shop_lays_down_its_own_volume() {
    use crate::shop::{bought, compared, input, one};
    let ink_per_millilitre = |mesh: &str| {
        let line = r#""shape":"square","size":"20 in","quantity":50,"colours":{"red":"60 %"},"stock":false"#;
        let comparison = compared(&one(line, &format!(r#""route":"screen-printing","ink":"uv"{mesh}"#)));
        let model = comparison.model("only").expect("the order has one alternative");
        // Without the residue in the screens, which is thrown away.
        let residue =
            crate::shop::flow(model, "UV screen ink, liquid", |what| matches!(what, faceload_core::inventory::What::LiquidWaste(..)));
        (bought(model, "UV screen ink") - residue, input(model, "screen.ink.volume.transparent"))
    };
    let (table, of_table) = ink_per_millilitre("");
    let (stated, _) = ink_per_millilitre(r#","mesh":{"opening":"73 um","thread":"40 um","fabric":"59 um"}"#);
    near("ink by the stated mesh over ink by the table", stated / table, 24.62 / of_table, 0.0005);
}
