//! Spots: the parts of a picture that carry focus. Each says its name and value, and leads to its arithmetic where
//! it has one.

use faceload_picture::Place;
use serde::Serialize;

/// A part of a picture, in css pixels of it.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Spot {
    /// Left edge.
    pub x: f64,
    /// Upper edge.
    pub y: f64,
    /// Width.
    pub width: f64,
    /// Height.
    pub height: f64,
    /// Its name and value.
    pub words: String,
    /// The arithmetic it leads to.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub lead: Option<Lead>,
}

/// Which arithmetic, and where in it.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Lead {
    /// The alternative.
    pub alternative: String,
    /// The indicator.
    pub indicator: &'static str,
    /// The stage that is looked at.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub stage: Option<&'static str>,
    /// The input that is looked at.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub input: Option<String>,
}

impl Spot {
    /// A spot that only says something.
    pub fn saying(place: Place, words: String) -> Self {
        Self { x: place.x, y: place.y, width: place.width, height: place.height, words, lead: None }
    }

    /// The same, leading to an alternative's arithmetic.
    pub fn leading(self, alternative: &str, indicator: &'static str) -> Self {
        Self { lead: Some(Lead { alternative: alternative.to_owned(), indicator, stage: None, input: None }), ..self }
    }

    /// The same, leading to a stage of it.
    pub fn at_stage(mut self, stage: &'static str) -> Self {
        if let Some(lead) = &mut self.lead {
            lead.stage = Some(stage);
        }
        self
    }

    /// The same, leading to an input of it.
    pub fn at_input(mut self, input: &str) -> Self {
        if let Some(lead) = &mut self.lead {
            lead.input = Some(input.to_owned());
        }
        self
    }
}

/// A picture as text, as large as it is, with its spots.
#[derive(Debug, Clone)]
pub struct Picture {
    /// SVG.
    pub svg: String,
    /// Width and height, css pixels.
    pub size: (u32, u32),
    /// Its spots, in the order they are gone through.
    pub spots: Vec<Spot>,
}
