// SPDX-License-Identifier: Apache-2.0
/**
 * Warmth added up: degree-days of a day known by its lowest and highest, the day a sum of them is reached, and how long a bloom lasts at a
 * temperature. {@link sillbook.reckon.heat.SineDay} is what {@code reckon.cold} counts days by, too.
 *
 * <p>Limits: no measured base temperature of forced tulips, hyacinths or daffodils was found published; between 15 and 20 C base and need
 * trade off almost wholly. How long a bloom lasts by temperature is a rough rule. Numbers in, numbers out, in degrees Celsius and days: it must
 * not know the journal, a clock, a file or a sentence.
 */
@NullMarked
package sillbook.reckon.heat;

import org.jspecify.annotations.NullMarked;
