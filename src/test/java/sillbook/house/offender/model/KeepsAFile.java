// SPDX-License-Identifier: Apache-2.0
package sillbook.house.offender.model;

import java.nio.file.Path;

record KeepsAFile(Path file) {}
