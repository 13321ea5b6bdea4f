package longpoint.desktop.panel;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.JLabel;

/** The program's own picture for title bars and task lists: a hipped roof seen from above. */
public final class AppIcon {
  private static final Color GROUND = new Color(0x2B6E5B);

  private AppIcon() {}

  /** In the sizes that systems ask for. */
  public static List<Image> images() {
    return Stream.of(16, 32, 48, 64, 128).map(AppIcon::image).toList();
  }

  private static Image image(int size) {
    BufferedImage image = new BufferedImage(size, size, BufferedImage.TYPE_INT_ARGB);
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setColor(GROUND);
    g.fillRoundRect(0, 0, size, size, size / 3, size / 3);
    JLabel white = new JLabel();
    white.setForeground(Color.WHITE);
    int inner = size * 3 / 4;
    LineIcon.of("tool.rectangle", inner)
        .paintIcon(white, g, (size - inner) / 2, (size - inner) / 2);
    g.dispose();
    return image;
  }
}
