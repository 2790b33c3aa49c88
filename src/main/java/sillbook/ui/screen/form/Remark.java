// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.form;

/**
 * What stands beside a blank: what was understood, or what is wrong.
 *
 * @param brief beside the blank
 * @param problem the whole sentence of what is wrong and what to write instead; empty when all is well
 */
public record Remark(String brief, String problem) {

    public static Remark understood(String brief) {
        return new Remark(brief, "");
    }

    public static Remark wrong(String brief, String problem) {
        return new Remark(brief, problem);
    }

    public boolean isProblem() {
        return !problem.isEmpty();
    }
}
