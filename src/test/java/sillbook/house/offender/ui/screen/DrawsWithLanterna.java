// SPDX-License-Identifier: Apache-2.0
package sillbook.house.offender.ui.screen;

import com.googlecode.lanterna.TextColor;

record DrawsWithLanterna(TextColor colour) {}
