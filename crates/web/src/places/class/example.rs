//! What the groups of the invented class conclude, in the language in use: well, in part, and not
//! by their data, as groups do.

use noseward_lesson::{Conclusion, Notebook, TrialResult, example_class};
use noseward_words as words;

use super::statements::separation;
use super::table::separation_mm;
use super::take_in::results_of;
use crate::app::State;
use crate::places::labels;

/// The notebooks of the invented class, with what each concludes.
pub(super) fn notebooks(state: &State) -> Vec<Notebook> {
    let mut notebooks = example_class();
    for (notebook, place) in notebooks.iter_mut().zip(0..) {
        if let [before, after] = &results_of(notebook)[..] {
            notebook.conclusion = conclusion(state, [before, after], place);
        }
        if place % 3 == 0 {
            notebook.add_plan(&words::example_plan());
        }
    }
    notebooks
}

fn conclusion(state: &State, trials: [&TrialResult; 2], place: usize) -> Conclusion {
    let [was, is] = trials.map(|result| separation(state, result).unwrap_or_default());
    let [before, after] = trials.map(|result| separation_mm(result).unwrap_or_default());
    let [was_seen, is_seen] = trials.map(|result| labels::overall(result.overall()));
    let claim = if before < after {
        words::example_claim_more(&was, &is)
    } else {
        words::example_claim_less(&was, &is)
    };
    let evidence = words::example_evidence(&was, &was_seen, &is, &is_seen);
    let (claim, evidence, reason, trust) = match place % 4 {
        0 if trials[1].nose_first() == Some(true) => {
            (claim, evidence, words::example_reason_behind(), words::example_trust())
        }
        0 => (claim, evidence, words::example_reason_ahead(), words::example_trust()),
        1 => {
            let claim = words::example_claim_vague().into();
            let evidence = words::example_evidence_vague().into();
            let [reason, trust] =
                [words::example_reason_vague(), words::example_trust_not()];
            (claim, evidence, reason, trust)
        }
        2 => {
            let evidence = words::example_evidence_one(&is_seen);
            (claim, evidence, words::example_reason_one(), words::example_trust_sure())
        }
        _ => {
            let claim = words::example_claim_wrong().into();
            let [reason, trust] = [words::example_reason_wrong(), words::example_trust()];
            (claim, evidence, reason, trust)
        }
    };
    Conclusion { claim, evidence, reason: reason.into(), trust: trust.into() }
}
