// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import java.util.Optional;

/**
 * A kind the grower added to those of the handbook.
 *
 * @param letter the letter its labels begin with
 * @param like the kind whose handbook figures it borrows
 */
public record OwnKind(Id<OwnKind> id, String name, String letter, Optional<Kind> like) implements Entity<OwnKind> {}
