// SPDX-License-Identifier: Apache-2.0
package sillbook.house.offender.app;

import com.fasterxml.jackson.databind.JsonNode;

record SpeaksJson(JsonNode answer) {}
