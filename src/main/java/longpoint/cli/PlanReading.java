package longpoint.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.planfile.Opened;
import longpoint.planfile.PlanFile;
import longpoint.planfile.PlanFileException;

/** Reads the plan a command names and says on the error stream what is wrong with the file. */
final class PlanReading {
  private PlanReading() {}

  /** The plan, or empty when the file cannot be used; then the reason has been printed. */
  static Optional<Plan> read(Path file, PrintWriter err) {
    try {
      Opened opened = PlanFile.read(file);
      for (Problem note : opened.notes()) {
        err.println("longpoint: " + file + ": note: " + note.message());
      }
      return Optional.of(opened.plan());
    } catch (PlanFileException e) {
      err.println("longpoint: " + file + ": " + e.getMessage());
      return Optional.empty();
    }
  }
}
