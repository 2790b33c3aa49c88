// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.terminal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.Executor;
import org.junit.jupiter.api.Test;
import sillbook.ui.draw.Alphabet;
import sillbook.ui.draw.ColourDepth;
import sillbook.ui.draw.Frame;
import sillbook.ui.draw.Ground;
import sillbook.ui.draw.Key;
import sillbook.ui.draw.Keys;
import sillbook.ui.draw.Palette;
import sillbook.ui.draw.Size;

class LoopTest {
    private final List<String> shown = new ArrayList<>();
    private final Queue<Runnable> work = new ArrayDeque<>();
    private final Recorder display = new Recorder();
    private final Loop<Sampler.State, Input, Sampler.Effect> loop = loop(work::add);

    private Loop<Sampler.State, Input, Sampler.Effect> loop(Executor worker) {
        return new Loop<>(
                Sampler.program(Ground.NONE, Alphabet.ASCII), Sampler::carryOut, worker, display, ColourDepth.NONE);
    }

    private final class Recorder implements Display {
        private Size size = new Size(60, 10);

        @Override
        public Size size() {
            return size;
        }

        @Override
        public void show(Frame frame, Palette palette) {
            shown.add(frame.cells().text().lines().findFirst().orElse("").strip());
        }

        @Override
        public void forget() {
            shown.add("forget");
        }

        @Override
        public void suspend() {
            shown.add("suspend");
            size = new Size(70, 12);
        }
    }

    private void press(Key... keys) {
        for (Key key : keys) {
            loop.hear(new Input.Pressed(key));
        }
    }

    @Test
    void theFirstPictureComesBeforeAnyKey() {
        assertThat(loop.turn()).isTrue();
        assertThat(shown).containsExactly("Sampler of 60x10  0 inputs, last nothing");
        assertThat(loop.isIdle()).isTrue();
    }

    @Test
    void whateverWaitsIsAnsweredBeforeOnePictureIsDrawn() {
        loop.turn();
        press(Keys.DOWN, Keys.DOWN, Keys.UP);
        assertThat(loop.isIdle()).isFalse();
        loop.turn();
        assertThat(shown).hasSize(2).last().asString().contains("3 inputs, last Up");
        loop.turn();
        assertThat(shown).hasSize(2);
    }

    @Test
    void anEffectIsDoneElsewhereAndItsAnswerComesAsAMessage() {
        loop.turn();
        press(Key.of('e'));
        loop.turn();
        assertThat(loop.isIdle()).isFalse();
        work.remove().run();
        loop.turn();
        assertThat(shown).last().asString().contains("2 inputs, last 'the answer'");
        assertThat(loop.isIdle()).isTrue();
    }

    @Test
    void whatIsDoneAsideWaitsForNothingAndNothingWaitsForIt() throws InterruptedException {
        loop.turn();
        press(Key.of('e'), Key.of('a'));
        loop.turn();
        assertThat(work).as("what came before it is not done yet").hasSize(1);
        for (int tries = 0; tries < 3_000 && !shown.get(shown.size() - 1).contains("the answer"); tries++) {
            Thread.sleep(10);
            loop.turn();
        }
        assertThat(shown).last().asString().contains("last 'the answer'");
        assertThat(work).hasSize(1);
    }

    @Test
    void aFaultInAnEffectEndsTheLoop() {
        loop.turn();
        press(Key.of('f'));
        loop.turn();
        work.remove().run();
        assertThatThrownBy(loop::turn).hasRootCauseMessage("a fault in an effect, 'Marrow Lane'");
    }

    @Test
    void anotherSizeIsDrawnAndTold() {
        loop.turn();
        loop.hear(new Input.Resized(new Size(50, 8)));
        loop.turn();
        assertThat(shown).last().asString().contains("of 50x8");
    }

    @Test
    void suspendedItComesBackInTheSizeItFinds() {
        loop.turn();
        press(Key.ctrl('z'));
        loop.turn();
        assertThat(shown).endsWith("suspend", "Sampler of 70x12  1 inputs, last Ctrl-Z");
    }

    @Test
    void askedForEverythingIsDrawnAnew() {
        loop.turn();
        press(Key.ctrl('l'));
        loop.turn();
        assertThat(shown).endsWith("forget", "Sampler of 60x10  1 inputs, last Ctrl-L");
    }

    @Test
    void leftItDrawsNoMoreAndHearsNoMore() throws InterruptedException {
        press(Keys.DOWN, Key.of('q'), Key.of('x'));
        assertThat(loop.turn()).isFalse();
        assertThat(shown).isEmpty();
        loop.run();
    }

    @Test
    void runEndsWhenTheProgramIsLeftFromAnotherThread() throws InterruptedException {
        Thread runner = new Thread(() -> {
            try {
                loop.run();
            } catch (InterruptedException stopped) {
                Thread.currentThread().interrupt();
            }
        });
        runner.start();
        press(Keys.DOWN);
        loop.leave();
        runner.join(30_000);
        assertThat(runner.isAlive()).isFalse();
    }
}
