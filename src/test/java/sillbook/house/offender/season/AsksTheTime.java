// SPDX-License-Identifier: Apache-2.0
package sillbook.house.offender.season;

import java.time.Instant;

interface AsksTheTime {
    default Instant now() {
        return Instant.now();
    }
}
