//! Budgets: how large the page may be and how soon it must answer. A size over its limit fails; times depend on the machine and
//! on what else it does, so they are printed beside their budgets, with its load.

use crate::page::sizes::{ONE_FILE, PACKED, Size, sizes};
use crate::{Chore, Outcome, page, program};

/// The chore of this file.
pub const CHORE: Chore = Chore { name: "budgets", help: "print sizes and times of the page beside their budgets", run };

/// What a size is to be at most, and the limit that fails until it is: what was reached and about 2 %.
struct Budget {
    what: &'static str,
    wanted: usize,
    limit: usize,
}

const BUDGETS: [Budget; 2] =
    [Budget { what: PACKED, wanted: 240_000, limit: 493_000 }, Budget { what: ONE_FILE, wanted: 600_000, limit: 805_000 }];

/// Scripts that print times beside their budgets.
const TIMES: [&str; 2] = ["tests/page/opening_time.mjs", "tests/page/sliding_time.mjs"];

fn run() -> Outcome {
    page::build()?;
    let kept = keep_sizes();
    if program::is_there("node") {
        // One, five and fifteen minutes, as Linux counts them.
        if let Ok(load) = std::fs::read_to_string("/proc/loadavg") {
            let load: Vec<&str> = load.split(' ').take(3).collect();
            let cores = std::thread::available_parallelism().map_or(1, usize::from);
            println!("load of the machine {} on {cores} cores", load.join(" "));
        }
        for script in TIMES {
            program::run(&mut program::program("node", &[script]))?;
        }
    }
    kept
}

/// Prints the sizes of the page that was built last beside their budgets, and fails where one is over its limit.
pub fn keep_sizes() -> Outcome {
    let sizes = sizes()?;
    let lines: Vec<(String, bool)> = sizes.iter().filter_map(|size| Some(beside(size, budget(size)?))).collect();
    for (line, _) in &lines {
        println!("{line}");
    }
    let over: Vec<&str> = lines.iter().filter(|(_, over)| *over).map(|(line, _)| line.as_str()).collect();
    if over.is_empty() { Ok(()) } else { Err(format!("too large: {}", over.join("; "))) }
}

fn budget(size: &Size) -> Option<&'static Budget> {
    BUDGETS.iter().find(|budget| budget.what == size.what)
}

/// A size beside its budget, and whether it is over the limit.
fn beside(size: &Size, budget: &Budget) -> (String, bool) {
    let Size { what, bytes } = size;
    let Budget { wanted, limit, .. } = budget;
    let word = if bytes > limit {
        format!("over the limit of {limit}")
    } else if bytes > wanted {
        format!("not kept, {} too many; over {limit} fails", bytes - wanted)
    } else {
        "kept".to_owned()
    };
    (format!("{what:<14} {bytes:>9} bytes of {wanted} wanted: {word}"), bytes > limit)
}

#[cfg(test)]
mod tests {
    use super::{BUDGETS, Budget, Size, beside};

    #[test]
    fn a_size_is_kept_or_not_kept_or_over_its_limit() {
        let budget = Budget { what: "page", wanted: 100, limit: 120 };
        let told = |bytes| beside(&Size { what: "page", bytes }, &budget);
        assert!(told(100).0.ends_with("100 bytes of 100 wanted: kept") && !told(100).1);
        assert!(told(120).0.ends_with("not kept, 20 too many; over 120 fails") && !told(120).1);
        assert!(told(121).0.ends_with("over the limit of 120") && told(121).1);
    }

    #[test]
    fn no_limit_is_below_what_is_wanted() {
        assert!(BUDGETS.iter().all(|budget| budget.limit >= budget.wanted));
    }
}
