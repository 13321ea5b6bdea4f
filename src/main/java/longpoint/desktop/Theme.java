package longpoint.desktop;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import java.awt.Font;
import javax.swing.UIManager;
import longpoint.desktop.canvas.CanvasColours;

/** The two looks of the window: paper by day, slate by night. */
public enum Theme {
  LIGHT,
  DARK;

  /**
   * Makes this the look of every window.
   *
   * @param textSize of ordinary lettering, in points
   */
  void install(int textSize) {
    UIManager.getDefaults(); // what every look begins with, while the typeface may still be read
    Typeface.install();
    FlatLaf.registerCustomDefaultsSource("longpoint.desktop");
    FlatLaf.setPreferredFontFamily(Typeface.FAMILY);
    FlatLaf.setPreferredSemiboldFontFamily(Typeface.SEMIBOLD);
    UIManager.put("defaultFont", new Font(Typeface.FAMILY, Font.PLAIN, textSize));
    if (this == DARK) {
      FlatDarkLaf.setup();
    } else {
      FlatLightLaf.setup();
    }
    FlatLaf.updateUI();
  }

  CanvasColours canvas() {
    return this == DARK ? CanvasColours.dark() : CanvasColours.light();
  }

  Theme other() {
    return this == DARK ? LIGHT : DARK;
  }
}
