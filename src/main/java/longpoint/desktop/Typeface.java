package longpoint.desktop;

import com.formdev.flatlaf.fonts.inter.FlatInterFont;
import com.formdev.flatlaf.util.FontUtils;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.Graphics2D;
import java.awt.GraphicsEnvironment;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The window's lettering, which comes with the program: the same on every desktop. */
final class Typeface {
  static final String FAMILY = FlatInterFont.FAMILY;
  static final String SEMIBOLD = FlatInterFont.FAMILY_SEMIBOLD;

  /** Upright and bold; nothing in the window is slanted. */
  private static final List<String> STYLES =
      List.of(FlatInterFont.STYLE_REGULAR, FlatInterFont.STYLE_BOLD);

  private static final Map<String, File> UNPACKED = new HashMap<>();
  private static boolean installed;

  private Typeface() {}

  /** Takes the typeface out of the program, which needs no screen; may be called early. */
  static synchronized void unpack() {
    for (String style : STYLES) {
      if (installed || UNPACKED.containsKey(style)) {
        continue;
      }
      try (InputStream in = FlatInterFont.class.getResourceAsStream(style)) {
        Path file = Files.createTempFile("longpoint", ".otf");
        file.toFile().deleteOnExit();
        Files.copy(in, file, StandardCopyOption.REPLACE_EXISTING);
        UNPACKED.put(style, file.toFile());
      } catch (IOException e) {
        return; // no room there: it is read where it lies
      }
    }
  }

  /** Makes the typeface known, once; may be called early, and by several threads. */
  static synchronized void install() {
    if (!installed) {
      unpack();
      installed = true;
      STYLES.forEach(Typeface::install);
      FontUtils.registerFontFamilyLoader(SEMIBOLD, FlatInterFont::installSemiBold);
    }
  }

  private static void install(String style) {
    File file = UNPACKED.get(style);
    try {
      if (file == null) {
        FlatInterFont.installStyle(style);
      } else {
        GraphicsEnvironment.getLocalGraphicsEnvironment()
            .registerFont(Font.createFont(Font.TRUETYPE_FONT, file));
      }
    } catch (IOException | FontFormatException e) {
      FlatInterFont.installStyle(style);
    }
  }

  /** Paints some letters and a round corner nobody sees, so that what paints them is at hand. */
  static void tryOut() {
    Graphics2D g = new BufferedImage(64, 32, BufferedImage.TYPE_INT_RGB).createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.fillRoundRect(1, 1, 40, 20, 8, 8);
    g.drawRoundRect(1, 1, 40, 20, 8, 8);
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    for (int style : new int[] {Font.PLAIN, Font.BOLD}) {
      g.setFont(new Font(FAMILY, style, 15));
      g.drawString("Aa", 2, 20);
    }
    g.dispose();
  }
}
