package longpoint.desktop;

import java.awt.print.PrinterException;
import java.io.IOException;
import longpoint.planfile.FileTrouble;
import longpoint.planfile.PlanFileException;

/** What went wrong with a piece of work, in words for the user: never the name of a class. */
public final class Trouble {
  private Trouble() {}

  /** A sentence in the language of the desktop. */
  public static String words(Throwable broken) {
    if (broken instanceof PlanFileException file) {
      return file.message(Texts.language());
    }
    if (broken instanceof IOException trouble) {
      return FileTrouble.of(trouble).sentence(Texts.language()) + ".";
    }
    String said = broken instanceof PrinterException ? broken.getLocalizedMessage() : null;
    return said == null || said.isBlank() ? Texts.of("trouble.bug") : said;
  }
}
