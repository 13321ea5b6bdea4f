package longpoint.desktop.paper;

import java.awt.image.BufferedImage;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import javax.imageio.ImageIO;
import longpoint.drawing.Page;
import longpoint.export.PdfWriter;
import longpoint.export.SvgWriter;
import longpoint.wording.Language;

/** One sheet as a file of its own, of the kind its name ends in. */
public final class SheetFile {
  /** Endings there are, the first for a name without one. */
  public static final List<String> ENDINGS = List.of("pdf", "svg", "png");

  private SheetFile() {}

  /**
   * Writes a sheet.
   *
   * @param title of the plan
   * @param language of what is written on the sheet
   * @throws IOException with words for the user
   */
  public static void write(Page page, String title, Language language, Path file)
      throws IOException {
    String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
    try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
      if (name.endsWith(".svg")) {
        SvgWriter.write(page, out);
      } else if (name.endsWith(".png")) {
        ImageIO.write((BufferedImage) SheetCopy.picture(page), "png", out);
      } else {
        PdfWriter.write(List.of(page), title, language, out);
      }
    }
  }
}
