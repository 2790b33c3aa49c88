// SPDX-License-Identifier: Apache-2.0
package sillbook.house.offender.ui.terminal;

import picocli.CommandLine;

record ReadsTheCommandLine(CommandLine line) {}
