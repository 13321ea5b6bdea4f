package longpoint.cli;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/**
 * The command line of the program.
 *
 * @see ExitCode
 */
@Command(
    name = "longpoint",
    description = "Roof framing figures and drawings from wall outlines.",
    mixinStandardHelpOptions = true,
    versionProvider = LongpointCommand.Version.class,
    subcommands = {
      FiguresCommand.class,
      PacketCommand.class,
      TraceCommand.class,
      CompareCommand.class
    },
    footer = {
      "",
      "Ends with 0 when all is well, 1 when the plan has errors, 2 when the command or a file",
      "cannot be used. An aid to layout, not engineering."
    })
public final class LongpointCommand implements Callable<Integer> {
  private final WindowDoor door;

  @Spec private CommandSpec spec;

  @Parameters(arity = "0..1", paramLabel = "PLAN", description = "Plan file to open in the window.")
  private Path plan;

  private LongpointCommand(WindowDoor door) {
    this.door = door;
  }

  /**
   * Parses and runs one command.
   *
   * @param door opens the window when the command asks for it
   * @return one of {@link ExitCode}
   */
  public static int run(String[] args, PrintWriter out, PrintWriter err, WindowDoor door) {
    if (args.length == 0) {
      // Nothing to parse: the window opens before the parser could even be loaded.
      return open(Optional.empty(), err, door);
    }
    int code =
        new CommandLine(new LongpointCommand(door))
            .setOut(out)
            .setErr(err)
            .setCaseInsensitiveEnumValuesAllowed(true)
            .setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF))
            .execute(args);
    out.flush();
    err.flush();
    return code;
  }

  @Override
  public Integer call() {
    if (plan != null && !Files.isRegularFile(plan)) {
      spec.commandLine().getErr().println("longpoint: there is no plan file " + plan);
      return ExitCode.UNUSABLE;
    }
    return open(Optional.ofNullable(plan), spec.commandLine().getErr(), door);
  }

  private static int open(Optional<Path> plan, PrintWriter err, WindowDoor door) {
    Optional<String> refused = door.open(plan);
    refused.ifPresent(why -> err.println("longpoint: " + why));
    return refused.isPresent() ? ExitCode.UNUSABLE : ExitCode.WELL;
  }

  /** The version in the jar's manifest. */
  static final class Version implements CommandLine.IVersionProvider {
    @Override
    public String[] getVersion() {
      String version = LongpointCommand.class.getPackage().getImplementationVersion();
      return new String[] {"longpoint " + (version == null ? "(from source)" : version)};
    }
  }
}
