package longpoint.desktop;

import java.awt.BorderLayout;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JSplitPane;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;

/** The sheet, and room for a view beside or below it, as wide as it was left last. */
final class Halves extends JSplitPane {
  private static final long serialVersionUID = 1;

  /** Share of the room the sheet keeps when a view is first shown. */
  private static final double SHEET = 0.5;

  private static final int DIVIDER = 6;

  private final JComponent sheet;
  private final transient Settings settings;
  private final JPanel pane = new JPanel(new BorderLayout());

  /** The room is open if it was so last. */
  Halves(JComponent sheet, Settings settings) {
    super(HORIZONTAL_SPLIT, true);
    this.sheet = sheet;
    this.settings = settings;
    if (settings.besideBelow()) {
      setOrientation(VERTICAL_SPLIT);
    }
    setName("beside");
    setBorder(BorderFactory.createEmptyBorder());
    setLeftComponent(sheet);
    setRightComponent(null);
    setDividerSize(0);
    // Keys of the switcher, which the divider would take for itself.
    for (String key : List.of("F6", "F8")) {
      getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke(key), "none");
    }
    if (settings.besideShown()) {
      open();
    }
  }

  /** Where the view goes. */
  JPanel pane() {
    return pane;
  }

  boolean isOpen() {
    return pane.getParent() != null;
  }

  void open() {
    setRightComponent(pane);
    setDividerSize(DIVIDER);
    double share = settings.sheetShare().orElse(SHEET);
    setResizeWeight(share);
    if (getWidth() > 0) {
      setDividerLocation(share);
    } else {
      SwingUtilities.invokeLater(() -> setDividerLocation(share));
    }
    settings.setBesideShown(true);
    revalidate();
  }

  void shut() {
    if (isWide()) {
      widen();
    }
    settings.setSheetShare(share());
    setRightComponent(null);
    setDividerSize(0);
    settings.setBesideShown(false);
    revalidate();
  }

  /** The share that the sheet has of the room. */
  private double share() {
    int all = isBelow() ? getHeight() : getWidth();
    return getDividerLocation() / (double) Math.max(1, all);
  }

  boolean isBelow() {
    return getOrientation() == VERTICAL_SPLIT;
  }

  /** Puts the view below the plan, where a wide house leaves room for it, or beside it again. */
  void turnBelow() {
    boolean below = !isBelow();
    settings.setBesideBelow(below);
    setOrientation(below ? VERTICAL_SPLIT : HORIZONTAL_SPLIT);
    setDividerLocation(SHEET);
  }

  boolean isWide() {
    return isOpen() && !sheet.isVisible();
  }

  /** Gives the view all the room, or the sheet its own back. */
  void widen() {
    boolean wide = sheet.isVisible();
    if (wide) {
      settings.setSheetShare(share());
    }
    sheet.setVisible(!wide);
    setDividerSize(wide ? 0 : DIVIDER);
    if (!wide) {
      setDividerLocation(settings.sheetShare().orElse(SHEET));
    }
    revalidate();
  }
}
