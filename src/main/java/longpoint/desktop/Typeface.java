package longpoint.desktop;

import com.formdev.flatlaf.fonts.inter.FlatInterFont;
import com.formdev.flatlaf.util.FontUtils;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;

/** The window's lettering, which comes with the program: the same on every desktop. */
final class Typeface {
  static final String FAMILY = FlatInterFont.FAMILY;
  static final String SEMIBOLD = FlatInterFont.FAMILY_SEMIBOLD;

  private static boolean installed;

  private Typeface() {}

  /** Reads the typeface, once; may be called early, and by several threads. */
  static synchronized void install() {
    if (!installed) {
      installed = true;
      // Upright and bold; nothing in the window is slanted.
      FlatInterFont.installStyle(FlatInterFont.STYLE_REGULAR);
      FlatInterFont.installStyle(FlatInterFont.STYLE_BOLD);
      FontUtils.registerFontFamilyLoader(SEMIBOLD, FlatInterFont::installSemiBold);
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
