// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen;

/** A layer that only tells how far something is, and goes when that has come about or has failed. */
public interface Waiting extends Layer {}
