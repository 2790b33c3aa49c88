// SPDX-License-Identifier: Apache-2.0
package sillbook.house.offender.attic;

record Forgotten(int boxes) {}
