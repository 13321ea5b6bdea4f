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

/** Takes a file that is dragged onto the window: a picture goes behind the plan, a plan opens. */
final class PlanDrop extends TransferHandler {
  private static final long serialVersionUID = 1;
  private final transient Consumer<Path> open;
  private final transient Consumer<Path> picture;

  PlanDrop(Consumer<Path> open, Consumer<Path> picture) {
    this.open = open;
    this.picture = picture;
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
        Consumer<Path> taker = BackdropFlow.isPicture(file.toPath()) ? picture : open;
        SwingUtilities.invokeLater(() -> taker.accept(file.toPath()));
        return true;
      }
      return false;
    } catch (UnsupportedFlavorException | IOException e) {
      return false;
    }
  }
}
