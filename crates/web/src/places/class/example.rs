//! What the groups of the invented class conclude, in the language in use: well, in part, and not
//! by their data, as groups do.

use noseward_lesson::{
    Conclusion, Notebook, Sentence, Sentences, Statement, Turned, example_class,
};
use noseward_stability::Units;
use noseward_words as words;

use crate::places::conclude::offered;

/// The notebooks of the invented class, with what each concludes.
pub(super) fn notebooks(units: Units) -> Vec<Notebook> {
    let mut notebooks = example_class();
    for (notebook, place) in notebooks.iter_mut().zip(0..) {
        notebook.conclusion = conclusion(notebook, place, units);
        if place % 3 == 0 {
            notebook.add_plan(&words::example_plan());
        }
    }
    notebooks
}

fn conclusion(notebook: &Notebook, place: usize, units: Units) -> Conclusion {
    let sentences = Sentences::of(notebook);
    let said = |of| -> Vec<String> {
        let offered = sentences.offered(of).into_iter();
        offered.map(|sentence| offered::sentence(&sentence, units)).collect()
    };
    let (claims, evidence) = (said(Statement::Claim), said(Statement::Evidence));
    let is_behind = sentences
        .offered(Statement::Reason)
        .iter()
        .any(|sentence| matches!(sentence, Sentence::Turned(_, Turned::PushedBehind)));
    match place % 4 {
        0 => Conclusion {
            claim: claims.join(" "),
            evidence: evidence.join(" "),
            reason: if is_behind {
                words::example_reason_behind().into()
            } else {
                words::example_reason_ahead().into()
            },
            trust: said(Statement::Trust).join(" "),
        },
        1 => Conclusion {
            claim: words::example_claim_vague().into(),
            evidence: words::example_evidence_vague().into(),
            reason: words::example_reason_vague().into(),
            trust: String::new(),
        },
        2 => Conclusion {
            claim: claims.into_iter().next().unwrap_or_default(),
            evidence: evidence.into_iter().next_back().unwrap_or_default(),
            reason: words::example_reason_one().into(),
            trust: words::example_trust_sure().into(),
        },
        _ => Conclusion {
            claim: words::example_claim_wrong().into(),
            evidence: evidence.join(" "),
            reason: String::new(),
            trust: words::example_trust_thrice().into(),
        },
    }
}
