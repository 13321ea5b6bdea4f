package longpoint.desktop;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.Dimension;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.UIManager;
import longpoint.desktop.panel.SidePanel;
import longpoint.desktop.panel.StatusLine;
import longpoint.desktop.panel.ToolStrip;

/**
 * Where a neighbour of the sheet stands. It has its size and its colour before the neighbour is
 * made, and keeps them when it comes, so that nothing jumps.
 */
final class Place extends JPanel {
  private static final long serialVersionUID = 1;

  /** Height of a picture in the header. */
  private static final int ICON = 20;

  /** Which neighbour's. */
  enum Of {
    TOOLS,
    HEADER,
    SIDE,
    STATUS
  }

  private final Of of;

  Place(Of of) {
    super(new BorderLayout());
    this.of = of;
    updateUI();
  }

  /** Puts the neighbour in. */
  void fill(JComponent neighbour) {
    add(neighbour, BorderLayout.CENTER);
    setBorder(null); // it draws its own
    revalidate();
    repaint();
  }

  @Override
  public Dimension getPreferredSize() {
    if (of == null) {
      return super.getPreferredSize();
    }
    return switch (of) {
      case TOOLS -> new Dimension(ToolStrip.width(this), 0);
      case SIDE -> new Dimension(SidePanel.width(), 0);
      case HEADER -> new Dimension(0, Math.max(ICON, letters()) + UIScale.scale(27));
      case STATUS -> new Dimension(0, StatusLine.height(letters()));
    };
  }

  private int letters() {
    return getFontMetrics(UIManager.getFont("defaultFont")).getHeight();
  }

  @Override
  public void updateUI() {
    super.updateUI();
    if (of == null) {
      return;
    }
    if (of == Of.SIDE) {
      setBackground(UIManager.getColor("Longpoint.card"));
    }
    if (getComponentCount() == 0) {
      Color rule = UIManager.getColor("Longpoint.rule");
      setBorder(
          switch (of) {
            case TOOLS -> BorderFactory.createMatteBorder(0, 0, 0, 1, rule);
            case HEADER -> BorderFactory.createMatteBorder(1, 0, 1, 0, rule);
            case SIDE -> BorderFactory.createMatteBorder(0, 1, 0, 0, rule);
            case STATUS -> BorderFactory.createMatteBorder(1, 0, 0, 0, rule);
          });
    }
  }
}
