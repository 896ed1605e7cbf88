//! Numbers in rising order, as places: one sort for all pictures.

/// The places of numbers, from the lowest; equal ones as they stand.
pub(crate) fn rising(numbers: &[f64]) -> Vec<usize> {
    let mut places: Vec<usize> = (0..numbers.len()).collect();
    // Step by step: they are few, and the standard library's sort is 8 kB of the page.
    for end in 1..places.len() {
        let mut place = end;
        while place > 0 && numbers[places[place]].total_cmp(&numbers[places[place - 1]]).is_lt() {
            places.swap(place, place - 1);
            place -= 1;
        }
    }
    places
}

#[cfg(test)]
mod tests {
    use super::rising;

    #[test]
    fn equal_numbers_stay_as_they_stand() {
        assert_eq!(rising(&[2.0, -1.0, 2.0, 0.0]), [1, 3, 0, 2]);
    }
}
