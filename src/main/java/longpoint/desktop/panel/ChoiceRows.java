package longpoint.desktop.panel;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.LayoutManager;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;

/**
 * Buttons two in a row where their words have room, else one: in halves where both fit into them,
 * else each with what it needs and half of what is left.
 */
final class ChoiceRows implements LayoutManager {
  private static final int GAP = 4;

  private int rowsAsked;

  @Override
  public void layoutContainer(Container parent) {
    if (place(parent, parent.getWidth()) != rowsAsked) {
      // The room was asked for at another width. Whoever is laying out now would not hear of it.
      SwingUtilities.invokeLater(((JComponent) parent)::revalidate);
    }
  }

  /** Places the buttons; answers with the number of rows. */
  private static int place(Container parent, int width) {
    int high = high(parent);
    Component[] all = parent.getComponents();
    int row = 0;
    for (int i = 0; i < all.length; row++) {
      int y = row * (high + GAP);
      if (pair(all, i, width)) {
        int first = firstOfPair(all, i, width);
        all[i].setBounds(0, y, first, high);
        all[i + 1].setBounds(first + GAP, y, width - first - GAP, high);
        i += 2;
      } else {
        boolean alone = all.length > 1 && i == all.length - 1 && 2 * wide(all[i]) + GAP <= width;
        all[i++].setBounds(0, y, alone ? (width - GAP) / 2 : width, high);
      }
    }
    return row;
  }

  private static boolean pair(Component[] all, int i, int width) {
    return i + 1 < all.length && wide(all[i]) + GAP + wide(all[i + 1]) <= width;
  }

  private static int firstOfPair(Component[] all, int i, int width) {
    int half = (width - GAP) / 2;
    boolean halves = Math.max(wide(all[i]), wide(all[i + 1])) <= half;
    int left = width - GAP - wide(all[i]) - wide(all[i + 1]);
    return halves ? half : wide(all[i]) + left / 2;
  }

  private static int wide(Component button) {
    return button.getPreferredSize().width;
  }

  private static int high(Container parent) {
    return Stream.of(parent.getComponents())
        .mapToInt(c -> c.getPreferredSize().height)
        .max()
        .orElse(0);
  }

  private static int rows(Container parent, int width) {
    Component[] all = parent.getComponents();
    int rows = 0;
    for (int i = 0; i < all.length; rows++) {
      i += pair(all, i, width) ? 2 : 1;
    }
    return rows;
  }

  @Override
  public Dimension preferredLayoutSize(Container parent) {
    int widest = Stream.of(parent.getComponents()).mapToInt(ChoiceRows::wide).max().orElse(0);
    int wanted = 2 * widest + GAP;
    rowsAsked = rows(parent, parent.getWidth() > 0 ? parent.getWidth() : wanted);
    return new Dimension(wanted, rowsAsked * high(parent) + Math.max(0, rowsAsked - 1) * GAP);
  }

  @Override
  public Dimension minimumLayoutSize(Container parent) {
    return new Dimension(0, preferredLayoutSize(parent).height);
  }

  @Override
  public void addLayoutComponent(String name, Component component) {}

  @Override
  public void removeLayoutComponent(Component component) {}
}
