// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import sillbook.model.Day;

/** Something written down, and the day it was so. */
public record Noted<T>(T value, Day day) {}
