// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

/** Why a pot failed, once its grower is sure of it. The book only lists what speaks for each; it never settles on one. */
public enum Cause {
    /** Fewer weeks of cold than it needs. */
    COLD_SHORT,
    /** A spell in the cold that was too warm to count. */
    WARM_SPELL,
    /** The potting mix or the bulbs froze. */
    FROZEN,
    /** It dried out, or stood in water. */
    TOO_WET_OR_DRY,
    /** It stood with ripening fruit, whose gas kills buds. */
    FRUIT_NEAR,
    /** It came from the cold into warmth too fast. */
    RUSHED
}
