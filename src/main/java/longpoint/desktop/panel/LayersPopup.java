package longpoint.desktop.panel;

import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import javax.swing.Icon;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JPopupMenu;
import longpoint.desktop.Texts;
import longpoint.desktop.canvas.PlanCanvas;
import longpoint.drawing.Layer;
import net.miginfocom.swing.MigLayout;

/** The list of layers, each with a piece of its line; stays open while one switches. */
public final class LayersPopup {
  private LayersPopup() {}

  /** Opens the list under a component, or in the middle of the sheet. */
  public static JPopupMenu open(PlanCanvas canvas, List<Layer> layers, JComponent under) {
    JPopupMenu popup = new JPopupMenu();
    popup.setName("layers");
    popup.setLayout(new MigLayout("insets 12 16 12 20, wrap 1, gap 0 5"));
    popup.add(new Words(Words.Rank.TITLE, Texts.of("layers.title")), "gapbottom 4");
    // Existing and new walls, say, may be one title to the reader: one row for each title.
    Set<String> titles = new LinkedHashSet<>();
    layers.forEach(l -> titles.add(l.title()));
    for (String title : titles) {
      List<Layer> of = layers.stream().filter(l -> l.title().equals(title)).toList();
      popup.add(row(canvas, of.get(0), of));
    }
    popup.show(under, 0, under.getHeight());
    return popup;
  }

  private static JCheckBox row(PlanCanvas canvas, Layer first, List<Layer> layers) {
    JCheckBox box = new JCheckBox(title(first), canvas.isLayerShown(first.name()));
    box.setName("layer." + first.name());
    box.setToolTipText(Texts.of("layers.tip"));
    box.addActionListener(
        e -> layers.forEach(l -> canvas.setLayerShown(l.name(), box.isSelected())));
    Icon tick = javax.swing.UIManager.getIcon("CheckBox.icon");
    box.setIcon(new WithLine(tick, first, canvas.colours().of(first.ink())));
    return box;
  }

  private static String title(Layer layer) {
    String key = "layer." + layer.name();
    return Texts.has(key) ? Texts.of(key) : layer.title();
  }

  /** A tick box followed by a piece of the layer's line. */
  private record WithLine(Icon tick, Layer layer, Color colour) implements Icon {
    private static final int LENGTH = 30;
    private static final int GAP = 10;

    @Override
    public void paintIcon(Component c, Graphics graphics, int x, int y) {
      tick.paintIcon(c, graphics, x, y + (getIconHeight() - tick.getIconHeight()) / 2);
      Graphics2D g = (Graphics2D) graphics.create();
      g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
      g.setColor(colour);
      int left = x + tick.getIconWidth() + GAP;
      int middle = y + getIconHeight() / 2;
      int high = Math.max(2, (int) Math.round(layer.pen().widthMm() * 7));
      switch (layer.pen().type()) {
        case CONTINUOUS -> g.fillRoundRect(left, middle - high / 2, LENGTH, high, high, high);
        case DASHED, CHAIN, DOTTED -> {
          for (int i = 0; i < LENGTH; i += 11) {
            g.fillRoundRect(left + i, middle - high / 2, 8, high, high, high);
          }
        }
      }
      g.dispose();
    }

    @Override
    public int getIconWidth() {
      return tick.getIconWidth() + GAP + LENGTH + 4;
    }

    @Override
    public int getIconHeight() {
      return Math.max(16, tick.getIconHeight());
    }
  }
}
