// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.List;

/** Every form of the quick line. Of two that understand a line equally well the first has it. */
final class Forms {
    static final List<Form> ALL = List.of(
            new PotUpForm(),
            new SameAgainForm(),
            new SuccessionForm(),
            new MoveForm(),
            new CareForm(),
            new CheckForm(),
            new RoundForm(),
            new FlowerForm(),
            new DisplayForm(),
            new CloseForm(),
            new PlantForm(),
            new OutcomeForm(),
            new AnswerForm(),
            new ReadingForm(),
            new TakeReadingForm(),
            new ThermometerForm(),
            new JotForm(),
            new VarietyForm(),
            new PurchaseForm(),
            new ChooseForm(),
            new SetAsideForm(),
            new OrderChosenForm(),
            new PlaceForm(),
            new GroundForm(),
            new ContainerForm(),
            new MixForm(),
            new UsualWayForm(),
            new KindForm(),
            new FigureForm(),
            new WishForm(),
            new PlanForm(),
            new NudgeForm(),
            new AdoptForm(),
            new PotFactsForm(),
            new CorrectForm(),
            new RemoveForm(),
            new SetForm());

    private Forms() {}
}
