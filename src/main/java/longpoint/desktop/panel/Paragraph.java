package longpoint.desktop.panel;

import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.util.ArrayList;
import java.util.List;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import longpoint.wording.Spacing;

/**
 * Words on as many lines as they need at a width, broken at plain spaces and where they say so.
 * Swing's own way to this is its HTML, and loading that takes longer than the rest of a small
 * window.
 */
public final class Paragraph extends JComponent {
  private static final long serialVersionUID = 1;
  private final Words.Rank rank;
  private final String text;
  private final int width;

  /**
   * @param width of a line, in pixels
   */
  public Paragraph(Words.Rank rank, String text, int width) {
    this.rank = rank;
    this.text = Spacing.kept(text);
    this.width = width;
    dress();
  }

  private void dress() {
    setFont(rank.font());
    setForeground(rank.colour());
  }

  @Override
  public void updateUI() {
    super.updateUI();
    dress();
  }

  private List<String> lines() {
    FontMetrics metrics = getFontMetrics(getFont());
    List<String> lines = new ArrayList<>();
    for (String piece : text.split("\n")) {
      String line = "";
      for (String word : piece.split(" ")) {
        String longer = line.isEmpty() ? word : line + " " + word;
        if (line.isEmpty() || metrics.stringWidth(longer) <= width) {
          line = longer;
        } else {
          lines.add(line);
          line = word;
        }
      }
      lines.add(line);
    }
    return lines;
  }

  @Override
  public Dimension getPreferredSize() {
    return new Dimension(width, lines().size() * getFontMetrics(getFont()).getHeight());
  }

  @Override
  public Dimension getMinimumSize() {
    return getPreferredSize();
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Lines.draw(this, graphics, lines());
  }

  @Override
  public AccessibleContext getAccessibleContext() {
    if (accessibleContext == null) {
      accessibleContext =
          new AccessibleJComponent() {
            private static final long serialVersionUID = 1;

            @Override
            public AccessibleRole getAccessibleRole() {
              return AccessibleRole.LABEL;
            }

            @Override
            public String getAccessibleName() {
              return text;
            }
          };
    }
    return accessibleContext;
  }
}
