// SPDX-License-Identifier: Apache-2.0
package sillbook.words.list;

import java.util.List;
import java.util.stream.Stream;
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

    /** What a table seems to be: purchases where it names a column that a list of purchases needs and varieties lack. */
    public static ListSort meant(Table table) {
        boolean counts = table.header().stream()
                .anyMatch(name -> Stream.of(PurchaseColumns.DATE, PurchaseColumns.COUNT)
                        .anyMatch(column -> column.isCalled(name)));
        return counts ? PURCHASES : VARIETIES;
    }

    /** The columns it may have, in the order they are told. */
    public List<? extends Column<?, ?>> columns() {
        return form.columns();
    }

    ListForm<?> form() {
        return form;
    }
}
