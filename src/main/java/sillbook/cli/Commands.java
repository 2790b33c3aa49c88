// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.PrintWriter;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import sillbook.store.StoreException;

/** The program's commands, and the one way to run them. */
public final class Commands {
    private static final int WIDTH = 80;

    private final Printer printer;
    private final CommandLine root;

    private Commands(World world) {
        this.printer = new Printer(world.out(), world.err(), world.environment());
        Program program = new Program(printer);
        var books = new Books(world, printer, program::journal);
        this.root = new CommandLine(program)
                .addSubcommand(new DemoCommand(printer))
                .addSubcommand(new TodayCommand(books, printer))
                .addSubcommand(new PotsCommand(books, printer))
                .addSubcommand(new PotCommand(books, printer))
                .addSubcommand(new PlacesCommand(books, printer))
                .addSubcommand(new ReadingsCommand(books, printer))
                .addSubcommand(new GroundCommand(books, printer))
                .addSubcommand(new BulbsCommand(books, printer))
                .addSubcommand(new SeasonsCommand(books, printer))
                .addSubcommand(new StandingsCommand(books, printer))
                .addSubcommand(new ChooseCommand(books, printer))
                .addSubcommand(new PlanCommand(books, printer))
                .addSubcommand(new SuppliesCommand(books, printer))
                .addSubcommand(new DiaryCommand(books, printer))
                .addSubcommand(new RoundCommand(books, printer))
                .addSubcommand(new LabelsCommand(books, printer))
                .addSubcommand(new PottingCommand(books, printer))
                .addSubcommand(new CalendarCommand(books, printer))
                .addSubcommand(new WriteCommand(books, printer, world.in()))
                .addSubcommand(new ImportCommand(books, printer, world.in()))
                .addSubcommand(new UndoCommand(books, printer))
                .addSubcommand(new RedoCommand(books, printer))
                .addSubcommand(new VerifyCommand(books, printer))
                .addSubcommand(new BackupCommand(books, printer, world.out()))
                .addSubcommand(new CommandLine(new ReckonCommand(printer))
                        .addSubcommand(new DatesCommand(printer, world.today()))
                        .addSubcommand(new ColdCommand(printer, world.in()))
                        .addSubcommand(new HeatCommand(printer, world.in()))
                        .addSubcommand(new SoilCommand(printer))
                        .addSubcommand(new FitCommand(printer))
                        .addSubcommand(new ShelfCommand(printer, world.in()))
                        .addSubcommand(new CoverCommand(printer, world.in()))
                        .addSubcommand(new EffectsCommand(printer, world.in()))
                        .addSubcommand(new StagesCommand(printer)));
        root.setOut(new PrintWriter(world.out(), true, UTF_8))
                .setUsageHelpWidth(WIDTH)
                .setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF))
                .setExecutionStrategy(this::carryOut)
                .setParameterExceptionHandler((wrong, arguments) -> wrong(wrong))
                .setExecutionExceptionHandler((failure, command, parsed) -> failed(failure));
    }

    /** Carries out one command line and gives the code to end with. */
    public static int run(World world, String... arguments) {
        return new Commands(world).run(List.of(arguments));
    }

    /** The commands and their options, to be looked at. */
    static CommandLine program(World world) {
        return new Commands(world).root;
    }

    private int run(List<String> arguments) {
        return Asked.forHelp(root, arguments).map(this::help).orElseGet(() -> execute(arguments));
    }

    private int execute(List<String> arguments) {
        return root.execute(arguments.toArray(String[]::new));
    }

    private int help(CommandLine command) {
        return print(command.getUsageMessage(Ansi.OFF).stripTrailing().lines().toList());
    }

    /** The library would print the version itself, and keep to itself that it could not. */
    private int carryOut(CommandLine.ParseResult asked) {
        return asked.isVersionHelpRequested() ? print(List.of(Version.LINE)) : new CommandLine.RunLast().execute(asked);
    }

    private int print(List<String> lines) {
        try {
            printer.lines(lines);
            return ExitCode.DONE;
        } catch (Printer.OutputClosed closed) {
            return failed(closed);
        }
    }

    private int wrong(CommandLine.ParameterException wrong) {
        Misuse.of(wrong).forEach(printer::say);
        return ExitCode.USED_WRONGLY;
    }

    private int failed(Exception failure) {
        if (failure instanceof Misused misused) {
            printer.say(misused.sentence());
            return ExitCode.USED_WRONGLY;
        }
        if (failure instanceof CouldNot couldNot) {
            printer.say(couldNot.sentence());
        } else if (failure instanceof StoreException refused) {
            printer.say(refused.sentence());
        } else if (failure instanceof Printer.OutputClosed closed) {
            closed.sentence().ifPresent(printer::say);
        } else {
            printer.say("Sillbook stumbled, which is a fault of its own: " + failure);
        }
        return ExitCode.COULD_NOT;
    }
}
