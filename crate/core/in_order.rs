//! Lists put in order by one sort: the standard library's is made anew for every kind of list, about 5 kB each in the page.
//! For lists that are short or seldom sorted; what is drawn is sorted where it is drawn.

use std::cmp::Ordering;

/// Puts a list in order; what is equal stays as it was.
///
/// ```
/// let mut list = vec!["bb", "a", "ab", "b"];
/// faceload_core::in_order(&mut list, |a, b| a.len().cmp(&b.len()));
/// assert_eq!(list, ["a", "b", "bb", "ab"]);
/// ```
pub fn in_order<T>(list: &mut Vec<T>, mut compare: impl FnMut(&T, &T) -> Ordering) {
    let places = places(list.len(), &mut |a, b| compare(&list[a], &list[b]));
    let mut held: Vec<Option<T>> = std::mem::take(list).into_iter().map(Some).collect();
    list.extend(places.into_iter().filter_map(|place| held[place].take()));
}

/// Puts a list of a few in order, step by step; what is equal stays as it was.
pub(crate) fn few_in_order<T: Ord>(list: &mut [T]) {
    for end in 1..list.len() {
        let mut place = end;
        while place > 0 && list[place] < list[place - 1] {
            list.swap(place, place - 1);
            place -= 1;
        }
    }
}

fn places(count: usize, compare: &mut dyn FnMut(usize, usize) -> Ordering) -> Vec<usize> {
    let mut places: Vec<usize> = (0..count).collect();
    places.sort_by(|a, b| compare(*a, *b));
    places
}
