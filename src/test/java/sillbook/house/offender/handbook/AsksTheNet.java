// SPDX-License-Identifier: Apache-2.0
package sillbook.house.offender.handbook;

import java.net.URI;

record AsksTheNet(URI page) {}
