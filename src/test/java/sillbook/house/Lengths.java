// SPDX-License-Identifier: Apache-2.0
package sillbook.house;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.TreeScanner;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;

/** Lengths in lines of code, the longest first. */
record Lengths(List<Length> all) {
    /** @param name the file's or the method's, with its class */
    record Length(String name, int lines) {
        @Override
        public String toString() {
            return name + " " + lines;
        }
    }

    Lengths {
        all = all.stream()
                .sorted(Comparator.comparingInt(Length::lines).reversed())
                .toList();
    }

    static Lengths ofFiles(List<SourceText> sources) {
        return new Lengths(sources.stream()
                .map(source -> new Length(source.name(), source.codeLines()))
                .toList());
    }

    /** Methods and constructors that have a body, with their signature and annotations. */
    static Lengths ofMethods(List<SourceText> sources) {
        List<JavaFileObject> files = sources.stream().map(Lengths::inMemory).toList();
        JavacTask task = (JavacTask)
                ToolProvider.getSystemJavaCompiler().getTask(null, null, null, List.of("-proc:none"), null, files);
        List<Length> found = new ArrayList<>();
        try {
            for (CompilationUnitTree unit : task.parse()) {
                String text = unit.getSourceFile().getCharContent(true).toString();
                Scan scan = new Scan(unit, Trees.instance(task).getSourcePositions(), SourceText.codeOf(text), found);
                unit.accept(scan, "");
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new Lengths(found);
    }

    private static JavaFileObject inMemory(SourceText source) {
        return new SimpleJavaFileObject(URI.create("string:///" + source.name()), JavaFileObject.Kind.SOURCE) {
            @Override
            public CharSequence getCharContent(boolean ignoreEncodingErrors) {
                return source.text();
            }
        };
    }

    /** Notes each method's length; the argument passed down is the name of the class around. */
    private static final class Scan extends TreeScanner<Void, String> {
        private final CompilationUnitTree unit;
        private final SourcePositions positions;
        private final List<String> lines;
        private final List<Length> found;

        Scan(CompilationUnitTree unit, SourcePositions positions, List<String> lines, List<Length> found) {
            this.unit = unit;
            this.positions = positions;
            this.lines = lines;
            this.found = found;
        }

        @Override
        public Void visitClass(ClassTree tree, String around) {
            return super.visitClass(tree, tree.getSimpleName().toString());
        }

        @Override
        public Void visitMethod(MethodTree tree, String around) {
            if (tree.getBody() != null) {
                int first = line(positions.getStartPosition(unit, tree));
                int last = line(positions.getEndPosition(unit, tree));
                int length = SourceText.countCode(lines.subList(first - 1, last));
                found.add(new Length(around + "." + tree.getName(), length));
            }
            return super.visitMethod(tree, around);
        }

        private int line(long position) {
            return (int) unit.getLineMap().getLineNumber(position);
        }
    }

    List<Length> longerThan(int lines) {
        return all.stream().filter(length -> length.lines() > lines).toList();
    }

    /** The length that this share of all keeps to: 0.5 gives the median. */
    int atMostAmong(double share) {
        int rank = (int) Math.ceil(share * all.size());
        return all.isEmpty() ? 0 : all.get(all.size() - rank).lines();
    }

    int total() {
        return all.stream().mapToInt(Length::lines).sum();
    }

    String worst(String what) {
        return "the longest " + what + ": " + all.subList(0, Math.min(10, all.size()));
    }

    String summary(String what) {
        return all.size() + " " + what + ", median " + atMostAmong(0.5) + ", nine in ten at most " + atMostAmong(0.9)
                + ", longest " + atMostAmong(1);
    }
}
