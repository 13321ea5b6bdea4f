package longpoint.desktop.panel;

import java.awt.BasicStroke;
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
import longpoint.drawing.Pen;
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
    private static final int LENGTH = 44;

    /** Pixels to a millimetre along the line; across it is drawn wider, to be told apart. */
    private static final float ALONG = 2.6f;

    private static final float ACROSS = 6;
    private static final int GAP = 10;

    @Override
    public void paintIcon(Component c, Graphics graphics, int x, int y) {
      tick.paintIcon(c, graphics, x, y + (getIconHeight() - tick.getIconHeight()) / 2);
      Graphics2D g = (Graphics2D) graphics.create();
      g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
      g.setColor(colour);
      int left = x + tick.getIconWidth() + GAP;
      int middle = y + getIconHeight() / 2;
      g.setStroke(stroke(layer.pen()));
      g.drawLine(left, middle, left + LENGTH, middle);
      g.dispose();
    }

    private static BasicStroke stroke(Pen pen) {
      List<Double> pattern = pen.type().patternMm();
      float[] dash = new float[pattern.size()];
      for (int i = 0; i < dash.length; i++) {
        dash[i] = Math.max(1, ALONG * pattern.get(i).floatValue());
      }
      return new BasicStroke(
          Math.max(1.4f, ACROSS * (float) pen.widthMm()),
          BasicStroke.CAP_BUTT,
          BasicStroke.JOIN_MITER,
          10,
          dash.length == 0 ? null : dash,
          0);
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
