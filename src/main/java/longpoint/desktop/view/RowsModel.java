package longpoint.desktop.view;

import javax.swing.table.AbstractTableModel;
import longpoint.export.Table;

/** A table of figures as Swing reads it. Nothing in it can be edited. */
final class RowsModel extends AbstractTableModel {
  private static final long serialVersionUID = 1;
  private final transient Table table;

  RowsModel(Table table) {
    this.table = table;
  }

  @Override
  public int getRowCount() {
    return table.rows().size();
  }

  @Override
  public int getColumnCount() {
    return table.heads().size();
  }

  @Override
  public String getColumnName(int column) {
    return table.heads().get(column);
  }

  @Override
  public Class<?> getColumnClass(int column) {
    return String.class;
  }

  @Override
  public Object getValueAt(int row, int column) {
    return table.rows().get(row).get(column);
  }
}
