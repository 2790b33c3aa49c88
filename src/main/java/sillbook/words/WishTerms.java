// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import sillbook.model.WishedFor.FlowerStage;

/** The words of how far flowers should be on the day they are wished for. */
public final class WishTerms {
    public static final Vocabulary<FlowerStage> STAGES = Vocabulary.<FlowerStage>of("stage of flowers")
            .with(FlowerStage.BUD_COLOUR, "buds in colour", "bud colour", "colour in the buds")
            .with(FlowerStage.FIRST_OPEN, "first open", "first flower open", "first flowers open")
            .with(FlowerStage.FULL, "full", "full flower", "in full flower", "all open");

    private WishTerms() {}
}
