//! Screen making and reclaiming: film positive, emulsion, drying, exposure, developing; ink,
//! emulsion and haze removed, mesh rinsed, so that the frame takes the next image.

use super::screens::{images_made, made, mesh_made};
use super::{Step, air, cleaner, screens};
use crate::inventory::{Activity, Book, Flows, Material, Part, Stage, Work};
use crate::quantity::{AirFlow, Area, Density, Electricity, Liquid, Mass, Per, Piece, Share, Time, Water};

static FILM_POSITIVE: Material =
    Material { solid: "waste.plastics-landfill.co2e", ..Material::of("film positive", &[Part::Whole("pet-film")]) };
static MESH: Material = Material { solid: "waste.plastics-landfill.co2e", ..Material::of("mesh", &[Part::Whole("pet-film")]) };
static EMULSION: Material = Material::of("emulsion", &[Part::Whole("screen-chemicals")]);
static EMULSION_REMOVER: Material = Material::of("emulsion remover", &[Part::Whole("screen-chemicals")]);

/// Screen making and reclaiming.
pub struct ScreenMaking;

impl Step for ScreenMaking {
    fn count(&self, work: &Work<'_>, activity: &mut Activity) {
        screens::count(work, activity);
    }

    fn flows(&self, book: &Book, flows: &mut Flows) {
        type PerMesh<Q> = Per<Q, Area>;
        let film = images_made(book) * book.rate::<PerMesh<Mass>>("screen.film-positive");
        flows.buy(&FILM_POSITIVE, film.clone());
        flows.solid_waste(&FILM_POSITIVE, film);
        let mesh = mesh_made(book) * book.rate::<PerMesh<Mass>>("screen.mesh-mass") / book.rate::<Share>("screen.mesh-life");
        flows.buy(&MESH, mesh.clone());
        flows.solid_waste(&MESH, mesh);
        let emulsion = mesh_made(book) * book.rate::<PerMesh<Mass>>("screen.emulsion");
        flows.buy(&EMULSION, emulsion.clone());
        flows.to_sewer(Stage::Prepress, &EMULSION, emulsion);
        type PerScreen = Per<Electricity, Piece>;
        flows.electricity(Stage::Prepress, "drying coated screens", made(book) * book.rate::<PerScreen>("screen.drying-energy"));
        flows.electricity(Stage::Prepress, "exposure", made(book) * book.rate::<PerScreen>("screen.exposure-energy"));
        flows.rinse(Stage::Prepress, "developing water", mesh_made(book) * book.rate::<PerMesh<Water>>("screen.developing-water"));

        let remover = mesh_made(book) * book.rate::<PerMesh<Liquid>>("screen.ink-remover");
        cleaner::used(book, flows, Stage::CleanUp, remover);
        let haze = mesh_made(book) * book.rate::<PerMesh<Liquid>>("screen.haze-remover");
        cleaner::used(book, flows, Stage::CleanUp, haze);
        let emulsion_remover =
            mesh_made(book) * book.rate::<PerMesh<Liquid>>("screen.emulsion-remover") * book.rate::<Density>("screen-chemicals.density");
        flows.buy(&EMULSION_REMOVER, emulsion_remover.clone());
        flows.to_sewer(Stage::CleanUp, &EMULSION_REMOVER, emulsion_remover);
        flows.rinse(Stage::CleanUp, "reclaim water", mesh_made(book) * book.rate::<PerMesh<Water>>("screen.reclaim-water"));

        type PerPiece = Per<Time, Piece>;
        let hours =
            made(book) * (book.rate::<PerPiece>("screen.making-time").formula() + book.rate::<PerPiece>("screen.reclaim-time").formula());
        flows.attend("making and reclaiming screens", hours.clone());
        air::ventilate(book, flows, "screen making", hours * book.rate::<AirFlow>("air.screen-making"));
    }
}
