// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen;

/**
 * Which copy of a journal is open, and how.
 *
 * @param file the file's name without its folder
 * @param isDemo whether it is the spare copy of the demo
 * @param isReadOnly whether nothing can be changed in it
 */
public record Copy(String file, boolean isDemo, boolean isReadOnly) {

    /** Before any journal is open. */
    public static final Copy NONE = new Copy("", false, false);

    /** What row 3 says of it; may be empty. */
    String words() {
        if (isReadOnly) {
            return "read only";
        }
        return isDemo ? "demo copy" : "";
    }
}
