package longpoint.desktop.paper;

import java.awt.Component;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JList;
import javax.swing.ListCellRenderer;
import longpoint.sheets.Paper;

/** Papers in a list by their titles. */
public final class PaperTitle extends DefaultListCellRenderer {
  private static final long serialVersionUID = 1;

  private PaperTitle() {}

  public static ListCellRenderer<Object> renderer() {
    return new PaperTitle();
  }

  @Override
  public Component getListCellRendererComponent(
      JList<?> list, Object value, int index, boolean selected, boolean focus) {
    String title = value instanceof Paper paper ? paper.title() : "";
    return super.getListCellRendererComponent(list, title, index, selected, focus);
  }
}
