package io.github.tapwright.comparison.body;

import io.github.tapwright.comparison.SetUpSpread;
import io.github.tapwright.mode.body.BodyChange;
import io.github.tapwright.mode.body.BodyModel;
import io.github.tapwright.mode.body.Prediction;
import io.github.tapwright.sitting.Sitting;
import java.util.List;
import java.util.Optional;

/**
 * A body fitted to sittings.
 *
 * @param open the sitting with the hole open
 * @param covered with the hole covered; empty if there is none
 * @param loaded with an added mass; empty if there is none
 * @param spread how far setting up again moves figures, part of every uncertainty
 * @param model what was found
 * @param remarks what was assumed or left out, one sentence each
 * @param whatIf a change and what it would do; empty if nobody asked
 */
public record FittedBody(
        Sitting open,
        Optional<Sitting> covered,
        Optional<Sitting> loaded,
        SetUpSpread spread,
        BodyModel model,
        List<String> remarks,
        Optional<WhatIf> whatIf) {

    /** Keeps a copy of the list. */
    public FittedBody {
        remarks = List.copyOf(remarks);
    }

    /**
     * A change and what it would do.
     *
     * @param change to think about
     * @param prediction what it would do
     */
    public record WhatIf(BodyChange change, Prediction prediction) {}
}
