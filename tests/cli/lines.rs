//! `faceload lines`: job by job, who can make it, why not, and what it loads there.

use faceload_core::comparison::Comparison;
use faceload_core::load::Indicator;
use faceload_core::order::demo;
use faceload_core::quantity::Kind;
use serde_json::Value;

use crate::program::faceload;
use crate::shop;

fn jobs(name: &str) -> Vec<Value> {
    let ran = faceload(&["lines", name, "--per", "order", "--json"]);
    assert_eq!((ran.code, ran.words.as_str()), (0, ""), "{name}");
    serde_json::from_str(&ran.result).expect("JSON")
}

fn compared(name: &str) -> Comparison {
    shop::compared(demo::find(name).expect("a demo").text)
}

#[test]
fn every_line_of_every_demo_is_listed_with_every_alternative() {
    for demo in demo::DEMOS {
        let (jobs, comparison) = (jobs(demo.name), compared(demo.name));
        assert_eq!(jobs.len(), comparison.jobs.len(), "{}", demo.name);
        assert_eq!(jobs.iter().filter_map(|job| job["lines"].as_u64()).sum::<u64>(), comparison.order.lines.len() as u64);
        let m2: f64 = jobs.iter().filter_map(|job| job["m2"].as_f64()).sum();
        let all: Vec<usize> = (0..comparison.jobs.len()).collect();
        shop::near("m2", m2, comparison.m2_of(&all), 1e-9 * m2);
        for job in &jobs {
            let ids: Vec<&str> =
                job["alternatives"].as_array().expect("alternatives").iter().filter_map(|one| one["id"].as_str()).collect();
            let stated: Vec<&str> = comparison.order.alternatives.iter().map(|one| one.id.as_str()).collect();
            assert_eq!(ids, stated);
        }
        let text = faceload(&["lines", demo.name]);
        assert_eq!((text.code, text.words.as_str()), (0, ""));
        for job in &jobs {
            assert!(text.result.contains(job["label"].as_str().expect("a label")), "{}", text.result);
        }
    }
}

#[test]
fn a_line_that_is_not_made_has_a_reason_and_no_loads_and_one_that_is_has_both_the_other_way() {
    let mut not_made = 0;
    for demo in demo::DEMOS {
        for job in jobs(demo.name) {
            for one in job["alternatives"].as_array().expect("alternatives") {
                let (makes, why_not) = (one["makes"].as_bool().expect("yes or no"), one["why_not"].as_str());
                assert_eq!(makes, why_not.is_none(), "{one}");
                if makes {
                    assert_eq!(one["loads"].as_object().map(|loads| loads.len()), Some(5), "{one}");
                } else if one["loads"].is_null() {
                    not_made += 1;
                } else {
                    assert!(why_not.is_some_and(|why| why.contains(" makes it")), "{one}");
                }
            }
        }
    }
    assert!(not_made > 0);
}

#[test]
fn the_loads_of_the_lines_sum_to_those_of_the_order() {
    for demo in demo::DEMOS {
        let (jobs, comparison) = (jobs(demo.name), compared(demo.name));
        for model in &comparison.models {
            // Where every line is made by every alternative, or this one shares no line with the others.
            let made: f64 = model.parts.iter().map(|part| part.jobs.len() as f64).sum();
            if made < jobs.len() as f64 {
                continue;
            }
            for indicator in Indicator::ALL {
                let of_job = |job: &Value| {
                    let alternatives = job["alternatives"].as_array().expect("alternatives");
                    let one = alternatives.iter().find(|one| one["id"] == model.alternative.id.as_str()).expect("the alternative");
                    one["loads"][indicator.id()]["value"].as_f64().expect("it makes every line")
                };
                let (sum, total) = (jobs.iter().map(of_job).sum::<f64>(), model.load(indicator, comparison.per).value);
                shop::near(&format!("{}, {} of {}", demo.name, indicator.id(), model.alternative.id), sum, total, 1e-9 * total.max(1e-9));
            }
        }
        assert!(comparison.models.iter().all(|model| model.m2.base() > 0.0));
    }
}
