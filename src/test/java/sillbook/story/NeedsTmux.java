// SPDX-License-Identifier: Apache-2.0
package sillbook.story;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionContext;

/** Leaves a story out, with the reason, where tmux is missing; but not where {@code CI} is set: there it must run. */
public final class NeedsTmux implements ExecutionCondition {
    @Override
    public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
        return decide(isInstalled(), System.getenv("CI") != null);
    }

    static ConditionEvaluationResult decide(boolean installed, boolean mustRun) {
        if (installed) {
            return ConditionEvaluationResult.enabled("tmux is there");
        }
        if (mustRun) {
            throw new IllegalStateException("CI is set, so the stories must run, but tmux is not installed");
        }
        return ConditionEvaluationResult.disabled("tmux is not installed");
    }

    private static boolean isInstalled() {
        String path = System.getenv().getOrDefault("PATH", "");
        return Stream.of(path.split(Pattern.quote(File.pathSeparator), -1))
                .map(folder -> Path.of(folder, "tmux"))
                .anyMatch(Files::isExecutable);
    }
}
