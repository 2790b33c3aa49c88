// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.List;

/** Every form of the quick line. Of two that understand a line equally well the first has it. */
final class Forms {
    static final List<Form> ALL = List.of(
            new PotUpForm(),
            new MoveForm(),
            new CheckForm(),
            new RoundForm(),
            new FlowerForm(),
            new CloseForm(),
            new CareForm());

    private Forms() {}
}
