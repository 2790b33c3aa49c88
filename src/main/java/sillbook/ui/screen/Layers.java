// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * The pages, and what lies over the open one.
 *
 * @param pages each page that exists, as it was left
 * @param over what lies over the open page, the topmost last
 * @param drafts what was left half done, by its name
 */
public record Layers(Map<PageName, Layer> pages, PageName open, List<Layer> over, Map<String, Layer> drafts) {

    public Layers {
        pages = Collections.unmodifiableMap(new EnumMap<>(pages));
        over = List.copyOf(over);
        drafts = Map.copyOf(drafts);
        if (!pages.containsKey(open)) {
            throw new IllegalArgumentException("there is no page " + open);
        }
    }

    public static Layers of(Map<PageName, Layer> pages) {
        return new Layers(pages, pages.keySet().iterator().next(), List.of(), Map.of());
    }

    public Layer page() {
        return Objects.requireNonNull(pages.get(open));
    }

    public Layer top() {
        return over.isEmpty() ? page() : over.get(over.size() - 1);
    }

    /** The open page and what lies over it, from the bottom up. */
    public List<Layer> stack() {
        List<Layer> stack = new ArrayList<>();
        stack.add(page());
        stack.addAll(over);
        return stack;
    }

    Layers withTop(Layer layer) {
        if (over.isEmpty()) {
            Map<PageName, Layer> changed = new EnumMap<>(pages);
            changed.put(open, layer);
            return new Layers(changed, open, over, drafts);
        }
        return lifted().plus(layer);
    }

    /** If the layer was once left half done, it comes back as it was left. */
    Layers laid(Layer layer) {
        return plus(layer.draftName().flatMap(this::draft).orElse(layer));
    }

    private Optional<Layer> draft(String name) {
        return Optional.ofNullable(drafts.get(name));
    }

    private Layers plus(Layer layer) {
        List<Layer> more = new ArrayList<>(over);
        more.add(layer);
        return new Layers(pages, open, more, drafts);
    }

    Layers lifted() {
        return cutTo(over.size() - 1);
    }

    Layers cutTo(int layers) {
        return new Layers(pages, open, over.subList(0, Math.max(0, Math.min(layers, over.size()))), drafts);
    }

    Layers opening(PageName page) {
        return new Layers(pages, page, List.of(), drafts);
    }

    /** With this layer waiting under its name, or with nothing waiting there. */
    Layers withDraft(String name, Layer layer) {
        Map<String, Layer> more = new HashMap<>(drafts);
        more.put(name, layer);
        return new Layers(pages, open, over, more);
    }

    Layers withoutDraft(String name) {
        Map<String, Layer> fewer = new HashMap<>(drafts);
        fewer.remove(name);
        return new Layers(pages, open, over, fewer);
    }

    Layers each(UnaryOperator<Layer> change) {
        Map<PageName, Layer> changed = new EnumMap<>(pages);
        changed.replaceAll((name, page) -> change.apply(page));
        Map<String, Layer> changedDrafts = new HashMap<>(drafts);
        changedDrafts.replaceAll((name, draft) -> change.apply(draft));
        return new Layers(changed, open, over.stream().map(change).toList(), changedDrafts);
    }
}
