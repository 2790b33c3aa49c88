// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.util.List;
import java.util.Optional;
import sillbook.model.Container;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Length;
import sillbook.model.Pot;
import sillbook.model.Pot.Planting;
import sillbook.model.Purchase;
import sillbook.reckon.fit.Bed;
import sillbook.reckon.fit.Frustum;
import sillbook.reckon.fit.PotShape;
import sillbook.reckon.fit.Spacing;
import sillbook.reckon.packing.Point;

/**
 * How the bulbs of a pot sit, where its width and their size are known; all lengths in cm.
 *
 * @param bed the pot and a bulb, as close as published counts set them
 * @param count of bulbs
 * @param places their middles, spread as far as the wall lets them; empty where so many are not known to fit
 * @param shape the pot, as far as its height is known, else of the usual one for its shape
 */
public record PotFit(Bed bed, int count, List<Point> places, Frustum shape) {
    public PotFit {
        places = List.copyOf(places);
    }

    /** Of a pot; empty where its width, or the size of the bulbs that name it, is not known. */
    public static Optional<PotFit> of(Journal journal, Pot pot) {
        return of(journal, pot.plantings(), pot.container(), pot.across());
    }

    /** The same of one that is still to be made. */
    public static Optional<PotFit> of(
            Journal journal, List<Planting> plantings, Optional<Id<Container>> standsIn, Optional<Length> width) {
        Optional<Container> container = standsIn.flatMap(journal.containers()::find);
        Optional<Double> across =
                container.flatMap(Container::across).or(() -> width).map(Length::centimetres);
        Optional<Double> bulb = plantings.stream()
                .findFirst()
                .flatMap(Planting::purchase)
                .flatMap(journal.purchases()::find)
                .flatMap(PotFit::bulb);
        int count = plantings.stream().mapToInt(Planting::count).sum();
        return across.flatMap(wide -> bulb.flatMap(size -> of(wide, size, count, container)));
    }

    /** Of so many bulbs in a pot so wide; empty where one is too wide for it, or lost in it. */
    public static Optional<PotFit> of(double across, double bulb, int count, Optional<Container> container) {
        if (!(bulb > 0) || !(across > bulb) || across > Bed.WIDEST * bulb) {
            return Optional.empty();
        }
        Bed packed = new Bed(across, bulb, Spacing.PACKED);
        List<Point> places = packed.places(count)
                .or(() -> packed.with(Spacing.TOUCHING).places(count))
                .orElse(List.of());
        return Optional.of(new PotFit(packed, count, places, inside(across, container)));
    }

    /** The inside of a container so wide, as far as its height is known, else of the usual one for its shape; of a pan where there is none. */
    public static Frustum inside(double across, Optional<Container> container) {
        Optional<Double> height =
                container.flatMap(Container::height).map(Length::centimetres).filter(high -> high > 0);
        PotShape usual = container.map(Container::shape).map(PotFit::shape).orElse(PotShape.PAN);
        return height.map(high -> new Frustum(across, PotShape.BASE * across, high))
                .orElseGet(() -> usual.of(across));
    }

    /** As near as the trade's shapes come to it. */
    public static PotShape shape(Container.Shape shape) {
        return switch (shape) {
            case STANDARD, GLASS, OUTER, OTHER -> PotShape.STANDARD;
            case AZALEA -> PotShape.AZALEA;
            case PAN, BOWL -> PotShape.PAN;
        };
    }

    /** The diameter of a bulb in cm: as measured across, else by the circumference that its grade is. */
    public static Optional<Double> bulb(Purchase purchase) {
        return purchase.grade()
                .across()
                .map(Length::centimetres)
                .or(() -> purchase.grade().girth().map(Bed::ofGrade));
    }

    /** As many as fit two pencils apart. */
    public int airy() {
        return bed.with(Spacing.AIRY).most().count();
    }

    /** As many as fit as close as published counts set them. */
    public int packed() {
        return bed.most().count();
    }

    /** As many as fit touching. */
    public int touching() {
        return bed.with(Spacing.TOUCHING).most().count();
    }
}
