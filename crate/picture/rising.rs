//! Numbers in rising order, as places: one sort for all pictures.

/// The places of numbers, from the lowest; equal ones as they stand.
pub(crate) fn rising(numbers: &[f64]) -> Vec<usize> {
    let mut places: Vec<usize> = (0..numbers.len()).collect();
    places.sort_by(|a, b| numbers[*a].total_cmp(&numbers[*b]));
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
