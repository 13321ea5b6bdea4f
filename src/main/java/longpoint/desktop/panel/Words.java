package longpoint.desktop.panel;

import java.awt.Color;
import java.awt.Font;
import java.util.Objects;
import javax.swing.JLabel;
import javax.swing.UIManager;

/**
 * The lettering of the panels. Each label keeps its rank and takes the size and colour of the look
 * in force, so that a change of look or of text size reaches every word.
 */
public final class Words extends JLabel {
  private static final long serialVersionUID = 1;

  /** How loudly a word is said. */
  public enum Rank {
    /** Title of a card. */
    TITLE(2, Font.BOLD, "Label.foreground"),
    /** Ordinary words. */
    PLAIN(0, Font.PLAIN, "Label.foreground"),
    /** A figure to read at arm's length. */
    FIGURE(4, Font.BOLD, "Label.foreground"),
    /** Small print and field labels. */
    QUIET(-1, Font.PLAIN, "Longpoint.quiet"),
    /** What is wrong with a field. */
    WRONG(-1, Font.PLAIN, "Longpoint.error");

    private final int larger;
    private final int style;
    private final String colour;
    private Font derivedFrom;
    private Font font;

    Rank(int larger, int style, String colour) {
      this.larger = larger;
      this.style = style;
      this.colour = colour;
    }

    /** The font of this rank in the look in force. For the event thread. */
    public Font font() {
      Font plain = UIManager.getFont("defaultFont");
      if (plain != derivedFrom) {
        derivedFrom = plain;
        font = plain.deriveFont(style, plain.getSize2D() + larger);
      }
      return font;
    }

    public Color colour() {
      return UIManager.getColor(colour);
    }
  }

  private Rank rank;

  public Words(Rank rank, String text) {
    super(text);
    this.rank = Objects.requireNonNull(rank);
    updateUI();
  }

  /** Words on as many lines as they need at a width in pixels. */
  public static Words wrapped(Rank rank, String text, int width) {
    return new Words(rank, Html.wrapped(text, width));
  }

  @Override
  public void updateUI() {
    super.updateUI();
    if (rank != null) {
      setFont(rank.font());
      setForeground(rank.colour());
    }
  }
}
