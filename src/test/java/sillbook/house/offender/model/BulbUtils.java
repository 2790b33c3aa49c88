// SPDX-License-Identifier: Apache-2.0
package sillbook.house.offender.model;

interface BulbUtils {
    interface Weigher {}
}
