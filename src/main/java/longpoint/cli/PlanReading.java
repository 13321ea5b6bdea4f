package longpoint.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.planfile.Opened;
import longpoint.planfile.PlanFile;
import longpoint.planfile.PlanFileException;
import longpoint.wording.Language;

/** Reads the plan a command names and says on the error stream what is wrong with the file. */
final class PlanReading {
  private PlanReading() {}

  /**
   * The plan, or empty when the file cannot be used; then the reason has been printed.
   *
   * @param language of the reason
   */
  static Optional<Plan> read(Path file, Language language, PrintWriter err) {
    try {
      Opened opened = PlanFile.read(file);
      for (Problem note : opened.notes()) {
        err.println(
            said(file, SpokenLanguage.text(language, "note", note.message(language)), language));
      }
      return Optional.of(opened.plan());
    } catch (PlanFileException e) {
      err.println(said(file, e.message(language), language));
      return Optional.empty();
    }
  }

  /** A line on the error stream about a file. */
  static String said(Path file, String words, Language language) {
    return "longpoint: " + SpokenLanguage.text(language, "said", file, words);
  }
}
