package longpoint.desktop;

import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JFrame;
import javax.swing.SwingUtilities;
import javax.swing.TransferHandler;
import longpoint.desktop.file.BackdropFlow;
import longpoint.desktop.file.SupplierFlow;
import longpoint.desktop.file.TracingFlow;

/**
 * Takes a file that is dragged onto the window: a picture goes behind the plan, the walls of a CAD
 * drawing are traced, a supplier's list is held against the layout, a plan opens.
 */
final class PlanDrop extends TransferHandler {
  private static final long serialVersionUID = 1;
  private final transient Consumer<Path> open;
  private final transient Consumer<Path> picture;
  private final transient Consumer<Path> drawing;
  private final transient Consumer<Path> list;

  PlanDrop(
      Consumer<Path> open, Consumer<Path> picture, Consumer<Path> drawing, Consumer<Path> list) {
    this.open = open;
    this.picture = picture;
    this.drawing = drawing;
    this.list = list;
  }

  private Consumer<Path> taker(Path file) {
    if (TracingFlow.isDrawing(file)) {
      return drawing;
    }
    if (SupplierFlow.isList(file)) {
      return list;
    }
    return BackdropFlow.isPicture(file) ? picture : open;
  }

  void on(JFrame frame) {
    frame.setTransferHandler(this);
  }

  @Override
  public boolean canImport(TransferSupport support) {
    return support.isDataFlavorSupported(DataFlavor.javaFileListFlavor);
  }

  @Override
  public boolean importData(TransferSupport support) {
    if (!canImport(support)) {
      return false;
    }
    try {
      Object data = support.getTransferable().getTransferData(DataFlavor.javaFileListFlavor);
      if (data instanceof List<?> files && !files.isEmpty() && files.get(0) instanceof File file) {
        // Later, so that the drop is over before a question opens.
        Path dropped = file.toPath();
        SwingUtilities.invokeLater(() -> taker(dropped).accept(dropped));
        return true;
      }
      return false;
    } catch (UnsupportedFlavorException | IOException e) {
      return false;
    }
  }
}
