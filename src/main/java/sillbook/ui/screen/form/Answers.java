// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.form;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** What stands in the blanks, spaces around it left out. */
public record Answers(Map<Blank, String> texts) {
    public static final Answers NONE = new Answers(Map.of());

    public Answers {
        texts = Collections.unmodifiableMap(new LinkedHashMap<>(texts));
    }

    /** Empty where nothing stands. */
    public String text(Blank blank) {
        return texts.getOrDefault(blank, "").strip();
    }

    public boolean isBlank(Blank blank) {
        return text(blank).isEmpty();
    }

    public Answers with(Blank blank, String text) {
        Map<Blank, String> changed = new LinkedHashMap<>(texts);
        changed.put(blank, text);
        return new Answers(changed);
    }
}
