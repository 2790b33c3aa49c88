// SPDX-License-Identifier: Apache-2.0
package sillbook.handbook;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sillbook.model.Kind;

/** The figures by name, kind and class; one for each. */
final class FigureIndex {
    private final Map<FigureName, Map<String, Map<String, Figure>>> byName = new EnumMap<>(FigureName.class);

    private FigureIndex() {}

    static FigureIndex of(List<Figure> figures) {
        var index = new FigureIndex();
        for (Figure figure : figures) {
            index.add(figure);
        }
        return index;
    }

    private void add(Figure figure) {
        Figure before = byName.computeIfAbsent(figure.name(), name -> new HashMap<>())
                .computeIfAbsent(figure.kind().name(), name -> new HashMap<>())
                .put(figure.kind().group(), figure);
        if (before != null) {
            throw new IllegalStateException("two figures used for one: " + figure.kind() + ", "
                    + figure.name().key());
        }
    }

    Optional<Figure> find(Kind kind, FigureName name) {
        Map<String, Map<String, Figure>> kinds = byName.getOrDefault(name, Map.of());
        return Optional.ofNullable(kinds.getOrDefault(kind.name(), Map.of()).get(kind.group()));
    }
}
