// SPDX-License-Identifier: Apache-2.0
package sillbook.house.offender.model;

record RecordWithGetter(int weeks) {
    int getWeeks() {
        return weeks;
    }
}
