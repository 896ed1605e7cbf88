//! Flows: what enters and leaves the shop, by stage.

use super::{Book, Formula, Material, Stage, Terms};
use crate::quantity::{Electricity, Freight, FuelHeat, Length, Mass, Share, Time, Water};

/// What flows.
#[derive(Debug, Clone)]
pub enum What {
    /// A material bought.
    Bought(&'static Material, Terms),
    /// A material on the faces in use.
    OnFace(&'static Material, Terms),
    /// A material leaving as solid waste of making.
    SolidWaste(&'static Material, Terms),
    /// A material leaving as hazardous liquid.
    LiquidWaste(&'static Material, Terms),
    /// A solvent going to air.
    Evaporated(&'static Material, Terms),
    /// Water of an ink going to air.
    Dried(&'static Material, Terms),
    /// A material going down the sewer.
    ToSewer(&'static Material, Terms),
    /// Scrap of the blank that is melted again.
    Recycled(&'static Material, Terms),
    /// A material of a face at the end of its life.
    Discarded(&'static Material, Terms),
    /// Electricity at the meter.
    Electricity(Terms),
    /// Fuel heat.
    Heat(Terms),
    /// Water from the main.
    WaterDrawn(Terms),
    /// Water to the sewer.
    WaterToSewer(Terms),
    /// Freight, mass times distance.
    Freight(Terms),
    /// Driving to a sign.
    Travel(Terms),
    /// Somebody's time: not a load.
    Attended(Terms),
}

/// Whether a flow is of every face made, or of those in use.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[expect(missing_docs, reason = "the names say it")]
pub enum Per {
    Made,
    Used,
}

/// One flow.
#[derive(Debug, Clone)]
pub struct Flow {
    /// Its stage.
    pub stage: Stage,
    /// What a reader calls it.
    pub label: String,
    /// What flows, and how much.
    pub what: What,
    /// Of faces made or in use.
    pub per: Per,
    /// Whether it belongs to the blank.
    pub blank: bool,
}

/// The flows of one alternative, as its steps add them.
#[derive(Debug, Default)]
pub struct Flows {
    /// In the order of the steps.
    pub list: Vec<Flow>,
    blank: bool,
}

impl Flows {
    /// From here on, flows belong to the blank, or not.
    pub fn of_blank(&mut self, blank: bool) {
        self.blank = blank;
    }

    fn add(&mut self, stage: Stage, label: &str, what: What, per: Per) {
        self.list.push(Flow { stage, label: label.to_owned(), what, per, blank: self.blank });
    }

    /// Buys a material.
    pub fn buy(&mut self, material: &'static Material, mass: Formula<Mass>) {
        self.add(Stage::Materials, material.name, What::Bought(material, mass.into_terms()), Per::Made);
    }

    /// Buys a material that comes with another.
    pub fn buy_for(&mut self, material: &'static Material, with: &Material, mass: Formula<Mass>) {
        self.add(Stage::Materials, &format!("{} of {}", material.name, with.name), What::Bought(material, mass.into_terms()), Per::Made);
    }

    /// Throws such a material away, solid.
    pub fn solid_waste_of(&mut self, material: &'static Material, with: &Material, mass: Formula<Mass>) {
        self.add(Stage::Waste, &format!("{} of {}", material.name, with.name), What::SolidWaste(material, mass.into_terms()), Per::Made);
    }

    /// Leaves a material on the faces.
    pub fn on_face(&mut self, material: &'static Material, mass: Formula<Mass>) {
        self.add(Stage::Imaging, material.name, What::OnFace(material, mass.into_terms()), Per::Used);
    }

    /// Throws a material away, solid.
    pub fn solid_waste(&mut self, material: &'static Material, mass: Formula<Mass>) {
        self.add(Stage::Waste, material.name, What::SolidWaste(material, mass.into_terms()), Per::Made);
    }

    /// Throws a material away, as hazardous liquid.
    pub fn liquid_waste(&mut self, material: &'static Material, mass: Formula<Mass>) {
        self.add(Stage::Waste, &format!("{}, liquid", material.name), What::LiquidWaste(material, mass.into_terms()), Per::Made);
    }

    /// Lets a solvent evaporate.
    pub fn evaporate(&mut self, stage: Stage, material: &'static Material, mass: Formula<Mass>) {
        self.add(stage, &format!("solvent of {} to air", material.name), What::Evaporated(material, mass.into_terms()), Per::Made);
    }

    /// Lets the water of an ink dry.
    pub fn dry(&mut self, material: &'static Material, mass: Formula<Mass>) {
        self.add(Stage::Drying, &format!("water of {} to air", material.name), What::Dried(material, mass.into_terms()), Per::Made);
    }

    /// Takes somebody's time: not a load, but a buyer asks next.
    pub fn attend(&mut self, label: &str, time: Formula<Time>) {
        self.add(Stage::Imaging, label, What::Attended(time.into_terms()), Per::Made);
    }

    /// Rinses a material down the sewer.
    pub fn to_sewer(&mut self, stage: Stage, material: &'static Material, mass: Formula<Mass>) {
        self.add(stage, &format!("{} to sewer", material.name), What::ToSewer(material, mass.into_terms()), Per::Made);
    }

    /// Melts scrap again.
    pub fn recycle(&mut self, material: &'static Material, mass: Formula<Mass>) {
        self.add(Stage::Waste, &format!("{} scrap, melted again", material.name), What::Recycled(material, mass.into_terms()), Per::Made);
    }

    /// Discards a material of the faces at the end of their life.
    pub fn discard(&mut self, material: &'static Material, mass: Terms) {
        self.add(Stage::EndOfLife, &format!("{}, at the end", material.name), What::Discarded(material, mass), Per::Used);
    }

    /// Draws electricity.
    pub fn electricity(&mut self, stage: Stage, label: &str, energy: Formula<Electricity>) {
        self.add(stage, label, What::Electricity(energy.into_terms()), Per::Made);
    }

    /// Burns fuel.
    pub fn heat(&mut self, stage: Stage, label: &str, heat: Formula<FuelHeat>) {
        self.add(stage, label, What::Heat(heat.into_terms()), Per::Made);
    }

    /// Draws water and sends all of it to the sewer.
    pub fn rinse(&mut self, stage: Stage, label: &str, water: Formula<Water>) {
        self.add(stage, label, What::WaterDrawn(water.terms().clone()), Per::Made);
        self.add(stage, &format!("{label}, to sewer"), What::WaterToSewer(water.into_terms()), Per::Made);
    }

    /// Carries goods to the customer.
    pub fn carry(&mut self, stage: Stage, label: &str, freight: Formula<Freight>) {
        self.add(stage, label, What::Freight(freight.into_terms()), Per::Used);
    }

    /// Drives to the signs.
    pub fn drive(&mut self, stage: Stage, label: &str, distance: Formula<Length>) {
        self.add(stage, label, What::Travel(distance.into_terms()), Per::Used);
    }

    /// Adds the lines made for stock: of what is made for stock a share is never used, so more is
    /// made, and the unused faces are thrown away.
    pub fn stocked(self, book: &Book) -> Self {
        let made = book.rate::<Share>("stock.unsold").per_one_minus();
        let unsold = made.clone() - Formula::one();
        let mut list = Vec::new();
        for mut flow in self.list {
            if let (What::OnFace(material, terms), false) = (&flow.what, flow.blank) {
                let waste = Formula::<Mass>::of_terms(terms.of_stock()) * unsold.clone();
                list.push(Flow {
                    stage: Stage::Waste,
                    label: format!("{} of faces never used", material.name),
                    what: What::SolidWaste(material, waste.into_terms()),
                    per: Per::Made,
                    blank: false,
                });
            }
            if let (What::OnFace(material, terms), true) = (&flow.what, flow.blank) {
                let scrap = Formula::<Mass>::of_terms(terms.of_stock()) * unsold.clone();
                list.push(Flow {
                    stage: Stage::Waste,
                    label: format!("{} never used, melted again", material.name),
                    what: What::Recycled(material, scrap.into_terms()),
                    per: Per::Made,
                    blank: true,
                });
            }
            let terms = flow.what.terms_mut();
            let once = Formula::one();
            let of_stock = if flow.per == Per::Made { &made } else { &once };
            *terms = Formula::<Share>::of_terms(std::mem::take(terms)).stocked(of_stock).into_terms();
            list.push(flow);
        }
        Self { list, blank: false }
    }
}

/// The amount of a flow of any kind, shared or to be changed, as the flow is held.
macro_rules! terms_of {
    ($what:expr) => {
        match $what {
            What::Bought(_, terms)
            | What::OnFace(_, terms)
            | What::SolidWaste(_, terms)
            | What::LiquidWaste(_, terms)
            | What::Evaporated(_, terms)
            | What::Dried(_, terms)
            | What::Attended(terms)
            | What::ToSewer(_, terms)
            | What::Recycled(_, terms)
            | What::Discarded(_, terms)
            | What::Electricity(terms)
            | What::Heat(terms)
            | What::WaterDrawn(terms)
            | What::WaterToSewer(terms)
            | What::Freight(terms)
            | What::Travel(terms) => terms,
        }
    };
}

impl What {
    /// How much.
    pub fn terms(&self) -> &Terms {
        terms_of!(self)
    }

    fn terms_mut(&mut self) -> &mut Terms {
        terms_of!(self)
    }

    /// The unit of its base, as a reader sees it.
    pub fn unit(&self) -> &'static str {
        match self {
            Self::Electricity(_) => "kWh",
            Self::Heat(_) => "MJ",
            Self::WaterDrawn(_) | Self::WaterToSewer(_) => "L",
            Self::Freight(_) => "kg\u{b7}m",
            Self::Travel(_) => "m",
            Self::Attended(_) => "h",
            _ => "kg",
        }
    }
}
