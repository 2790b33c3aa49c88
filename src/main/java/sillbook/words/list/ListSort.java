// SPDX-License-Identifier: Apache-2.0
package sillbook.words.list;

import java.util.List;
import sillbook.words.Vocabulary;

/** What a list is of. */
public enum ListSort {
    VARIETIES("varieties", new VarietyList()),
    PURCHASES("purchases", new PurchaseList());

    public static final Vocabulary<ListSort> WORDS = Vocabulary.<ListSort>of("sort of list")
            .with(VARIETIES, VARIETIES.word, "variety")
            .with(PURCHASES, PURCHASES.word, "purchase");

    private final String word;

    /** Each form is a value without fields. */
    @SuppressWarnings("ImmutableEnumChecker") // an interface cannot promise it
    private final ListForm<?> form;

    ListSort(String word, ListForm<?> form) {
        this.word = word;
        this.form = form;
    }

    /** {@code varieties}. */
    public String word() {
        return word;
    }

    /** The columns it may have, in the order they are told. */
    public List<? extends Column<?, ?>> columns() {
        return form.columns();
    }

    ListForm<?> form() {
        return form;
    }
}
