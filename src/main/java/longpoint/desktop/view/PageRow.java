package longpoint.desktop.view;

import java.awt.Component;
import java.util.function.Supplier;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.ListCellRenderer;
import longpoint.desktop.panel.Words;
import longpoint.drawing.Page;
import net.miginfocom.swing.MigLayout;

/** A sheet in the list of sheets: its number, then its title. */
final class PageRow extends JPanel implements ListCellRenderer<Page> {
  private static final long serialVersionUID = 1;
  private final Words number = new Words(Words.Rank.PLAIN, "");
  private final Words title = new Words(Words.Rank.QUIET, "");

  private final transient Supplier<String> job;

  /**
   * @param job title of the plan, which need not be said on every row
   */
  PageRow(Supplier<String> job) {
    super(new MigLayout("insets 5 10 5 8, gap 8 0, fillx", "[48!][grow,0:0:]"));
    this.job = job;
    add(number);
    add(title, "growx, wmin 0");
  }

  @Override
  public Component getListCellRendererComponent(
      JList<? extends Page> list, Page page, int index, boolean chosen, boolean focus) {
    setBackground(chosen ? list.getSelectionBackground() : list.getBackground());
    number.setFont(Words.Rank.PLAIN.font().deriveFont(java.awt.Font.BOLD));
    number.setForeground(chosen ? list.getSelectionForeground() : Words.Rank.PLAIN.colour());
    title.setFont(Words.Rank.QUIET.font());
    title.setForeground(chosen ? list.getSelectionForeground() : Words.Rank.QUIET.colour());
    number.setText(page.number());
    String end = ", " + job.get();
    String bare = page.title();
    title.setText(bare.endsWith(end) ? bare.substring(0, bare.length() - end.length()) : bare);
    setToolTipText(page.number() + "  " + page.title());
    getAccessibleContext().setAccessibleName(page.number() + " " + page.title());
    return this;
  }
}
