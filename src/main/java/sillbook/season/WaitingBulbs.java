// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import sillbook.model.Purchase;

/**
 * Bulbs that wait at a place to be potted.
 *
 * @param bulbs those of the purchase that are in no pot
 * @param daysCold days since they came on which it was cold there
 */
public record WaitingBulbs(Purchase purchase, int bulbs, int daysCold) {}
