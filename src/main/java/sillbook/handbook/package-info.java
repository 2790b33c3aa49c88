// SPDX-License-Identifier: Apache-2.0
/**
 * The published figures of the trade, each with its source and how sure it is; {@link sillbook.handbook.Handbook} is
 * the door, {@link sillbook.handbook.FigureInForce} puts the grower's own figures over it.
 *
 * <p>The figures are data, in the {@code .tsv} files beside this package's classes, read when first asked for: the
 * package stands on the way to the first screen and needs nothing but the Java base. A gap in what is published stays a
 * gap. It must not know the journal, today, or what is done with a figure.
 */
@NullMarked
package sillbook.handbook;

import org.jspecify.annotations.NullMarked;
