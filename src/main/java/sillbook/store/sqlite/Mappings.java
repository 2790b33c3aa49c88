// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import sillbook.model.Entity;

/** The mappings of all types of entry, what is referred to before what refers to it. */
final class Mappings {
    static final List<Mapping<?>> ALL = List.of(
            new SettingsRows(),
            new OwnKindRows(),
            new VarietyRows(),
            new OwnFigureRows(),
            new PlaceRows(),
            new SpaceRows(),
            new TrenchRows(),
            new PurchaseRows(),
            new PottingMixRows(),
            new ContainerRows(),
            new UsualWayRows(),
            new PotRows(),
            new EventRows(),
            new SpanReadingRows(),
            new SpotReadingRows(),
            new ReadingSourceRows(),
            new LoggerProfileRows(),
            new ThermometerRows(),
            new OutcomeRows(),
            new WishRows(),
            new ChoiceRows(),
            new SeasonPlanRows(),
            new IntentionRows(),
            new PastWindowsRows());

    private static final Map<Class<?>, Mapping<?>> BY_TYPE =
            ALL.stream().collect(Collectors.toMap(Mapping::type, Function.identity()));
    private static final Map<String, Mapping<?>> BY_TABLE =
            ALL.stream().collect(Collectors.toMap(mapping -> mapping.table().name(), Function.identity()));

    private Mappings() {}

    static Mapping<?> of(Entity<?> entity) {
        return known(BY_TYPE.get(entity.getClass()), entity.getClass().getSimpleName());
    }

    static Mapping<?> ofTable(String name) {
        return known(BY_TABLE.get(name), name);
    }

    private static Mapping<?> known(@Nullable Mapping<?> mapping, String what) {
        if (mapping == null) {
            throw new IllegalArgumentException("there is no table of " + what);
        }
        return mapping;
    }
}
