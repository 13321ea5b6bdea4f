package longpoint;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import longpoint.cli.ExitCode;
import longpoint.cli.LongpointCommand;
import longpoint.desktop.DesktopApp;
import longpoint.desktop.NoDisplayException;
import longpoint.packet.Packet;

/** Starts the program: hands the window to the command line, so that neither knows the other. */
public final class Longpoint {
  private Longpoint() {}

  public static void main(String[] args) {
    PrintWriter out = new PrintWriter(System.out, false, StandardCharsets.UTF_8);
    PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    int code = LongpointCommand.run(args, out, err, Longpoint::open);
    if (code != ExitCode.WELL) {
      System.exit(code);
    }
  }

  private static Optional<String> open(Optional<Path> plan) {
    try {
      DesktopApp.open(plan, Packet::write);
      return Optional.empty();
    } catch (NoDisplayException e) {
      return Optional.of(e.getMessage());
    }
  }
}
