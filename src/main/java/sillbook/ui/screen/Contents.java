// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen;

import java.util.List;

/** What binds the layers into a book: its pages, and the keys that mean the same everywhere. */
public interface Contents {

    /** The pages as they stand when a journal is opened, the first one open. */
    Layers pages(Snapshot shown);

    /** What every layer offers after its own, as far as the one on top lets it. */
    List<Offer> everywhere(State state);
}
