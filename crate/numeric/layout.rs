//! A layout: what a run does one after the other, and in which place each number stands meanwhile.
//!
//! A step is made just before what first needs it, and leaves its place to another once nothing needs it any more. So few
//! numbers are held at once, and they stay near the processor.

use crate::Form;
use crate::run::{Load, Step};

/// Where a number stands during a run.
pub(crate) type Place = u32;

/// The place that always holds 1.
pub(crate) const ONE: Place = 0;

/// The place of a column's values, which are read before all else.
pub(crate) fn of_column(column: usize) -> Place {
    column as Place + 1
}

/// One thing to do; the last place is where what is made stands.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) enum Deed {
    /// The form of one.
    Form(Place, Form, Place),
    /// The product of two.
    Times(Place, Place, Place),
    /// So many times one and so many times another.
    Two([(Place, f64); 2], Place),
    /// So many times another, added to what stands there.
    Add(Place, f64, Place),
    /// So many times the product of two.
    Product(Place, Place, f64, Place),
    /// So many times the product of two, added to what stands there.
    AddProduct(Place, Place, f64, Place),
    /// Hands out the next load.
    Out(Place),
}

/// The steps of some loads in the order that holds few numbers at once.
#[derive(Debug, Clone)]
pub struct Layout {
    pub(crate) deeds: Vec<Deed>,
    pub(crate) places: usize,
    /// How many of the columns are read.
    pub(crate) columns: usize,
}

impl Layout {
    /// Of steps, each after those that it needs, the first of which is 1; what no load needs is left out.
    pub fn of(steps: &[Step], loads: &[Load]) -> Self {
        let read = |step: &Step| if let Step::Form(column, _) = step { usize::from(*column) + 1 } else { 0 };
        let columns = steps.iter().map(read).max().unwrap_or(0);
        let mut laying = Laying {
            steps,
            left: uses(steps, loads),
            held: vec![None; steps.len()],
            free: Vec::new(),
            layout: Self { deeds: Vec::new(), places: of_column(columns) as usize, columns },
        };
        for load in loads {
            laying.load(load);
        }
        laying.layout
    }
}

/// By how many of those that a load needs in the end each step is needed.
fn uses(steps: &[Step], loads: &[Load]) -> Vec<usize> {
    let mut uses = vec![0; steps.len()];
    for (amount, factor, _) in loads.iter().flatten() {
        uses[*amount as usize] += 1;
        uses[*factor as usize] += 1;
    }
    for at in (0..steps.len()).rev().filter(|at| *at > 0) {
        if uses[at] > 0 {
            needs(&steps[at], |need| uses[need as usize] += 1);
        }
    }
    uses
}

fn needs(step: &Step, mut need: impl FnMut(u32)) {
    match step {
        Step::One | Step::Form(..) => {}
        Step::Times(a, b) => [*a, *b].into_iter().for_each(need),
        Step::Sum(list) => list.iter().for_each(|(at, _)| need(*at)),
    }
}

struct Laying<'a> {
    steps: &'a [Step],
    /// How often each step is still needed.
    left: Vec<usize>,
    held: Vec<Option<Place>>,
    free: Vec<Place>,
    layout: Layout,
}

impl Laying<'_> {
    fn load(&mut self, load: &Load) {
        let to = self.taken();
        if load.is_empty() {
            self.layout.deeds.push(Deed::Product(ONE, ONE, 0.0, to));
        }
        for (place, (amount, factor, by)) in load.iter().enumerate() {
            let [a, b] = [*amount, *factor].map(|step| self.made(step));
            self.layout.deeds.push(if place == 0 { Deed::Product(a, b, *by, to) } else { Deed::AddProduct(a, b, *by, to) });
            self.used(*amount);
            self.used(*factor);
        }
        self.layout.deeds.push(Deed::Out(to));
        self.free.push(to);
    }

    /// The place of a step, which is made if it is not.
    fn made(&mut self, step: u32) -> Place {
        let at = step as usize;
        if let Some(place) = self.held[at] {
            return place;
        }
        let place = match &self.steps[at] {
            Step::One => ONE,
            Step::Form(column, Form::Power(1)) => of_column(usize::from(*column)),
            Step::Form(column, form) => {
                let to = self.taken();
                self.layout.deeds.push(Deed::Form(of_column(usize::from(*column)), *form, to));
                to
            }
            Step::Times(a, b) => {
                let [first, second] = [*a, *b].map(|step| self.made(step));
                let to = self.taken();
                self.layout.deeds.push(Deed::Times(first, second, to));
                to
            }
            Step::Sum(list) => {
                let list: Vec<(Place, f64)> = list.iter().map(|(step, by)| (self.made(*step), f64::from_bits(*by))).collect();
                let to = self.taken();
                let mut list = list.into_iter();
                let two = [(); 2].map(|()| list.next().unwrap_or((ONE, 0.0)));
                self.layout.deeds.push(Deed::Two(two, to));
                self.layout.deeds.extend(list.map(|(from, by)| Deed::Add(from, by, to)));
                to
            }
        };
        needs(&self.steps[at], |need| self.used(need));
        self.held[at] = Some(place);
        place
    }

    /// A place for another number.
    fn taken(&mut self) -> Place {
        self.free.pop().unwrap_or_else(|| {
            self.layout.places += 1;
            (self.layout.places - 1) as Place
        })
    }

    /// A step was needed once; after the last time its place is free, but for those of 1 and of the columns.
    fn used(&mut self, step: u32) {
        let at = step as usize;
        self.left[at] -= 1;
        if self.left[at] == 0 && !matches!(self.steps[at], Step::One | Step::Form(_, Form::Power(1))) {
            self.free.extend(self.held[at]);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::{Deed, Layout};
    use crate::Form;
    use crate::run::Step;

    fn times(a: u32, b: u32) -> Step {
        Step::Times(a, b)
    }

    #[test]
    fn a_place_is_used_again_once_nothing_needs_what_stands_there() {
        // x, then its square, fourth and eighth power, each needed by the next alone.
        let steps = [Step::One, Step::Form(0, Form::Power(1)), times(1, 1), times(2, 2), times(3, 3)];
        let layout = Layout::of(&steps, &[vec![(4, 0, 1.0)]]);
        // 1, x, the load, and two that take turns.
        assert_eq!(layout.places, 5);
        assert_eq!(layout.deeds[..2], [Deed::Times(1, 1, 3), Deed::Times(3, 3, 4)]);
        assert_eq!(layout.deeds[2], Deed::Times(4, 4, 3));
    }

    #[test]
    fn what_no_load_needs_is_left_out() {
        let steps = [Step::One, Step::Form(0, Form::Power(1)), times(1, 1), Step::Form(0, Form::PerOnePlus)];
        let layout = Layout::of(&steps, &[vec![(1, 0, 2.0)], vec![]]);
        assert_eq!(layout.deeds, [Deed::Product(1, 0, 2.0, 2), Deed::Out(2), Deed::Product(0, 0, 0.0, 2), Deed::Out(2)]);
    }
}
