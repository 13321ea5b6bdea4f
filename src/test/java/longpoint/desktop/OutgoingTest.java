package longpoint.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Toolkit;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.image.BufferedImage;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.swing.JButton;
import javax.swing.JList;
import javax.xml.parsers.DocumentBuilderFactory;
import longpoint.desktop.paper.SheetCopy;
import longpoint.packet.Packet;
import longpoint.plan.Plan;
import longpoint.planfile.PlanFile;
import org.apache.pdfbox.Loader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What leaves the window by clipboard, by file and by packet. */
class OutgoingTest {
  @TempDir Path folder;

  private static Plan cabin() throws Exception {
    return PlanFile.read(Path.of("sample-plans", "tolverby-cabin.json")).plan();
  }

  @Test
  void thePlanIsCopiedAsAPictureAndAsSvg() throws Exception {
    try (WindowDriver window = new WindowDriver(cabin())) {
      window.design();
      window.menu("edit.copy");
      Transferable picture = clipboard();
      BufferedImage image = (BufferedImage) picture.getTransferData(DataFlavor.imageFlavor);
      assertThat(image.getWidth()).isGreaterThan(500);
      window.menu("edit.copySvg");
      String svg = (String) clipboard().getTransferData(DataFlavor.stringFlavor);
      var root =
          DocumentBuilderFactory.newInstance()
              .newDocumentBuilder()
              .parse(new java.io.ByteArrayInputStream(svg.getBytes("UTF-8")))
              .getDocumentElement();
      assertThat(root.getTagName()).isEqualTo("svg");
      assertThat(svg).contains("A-ROOF-RIDG");
      try (InputStream again = (InputStream) clipboard().getTransferData(SheetCopy.SVG)) {
        assertThat(new String(again.readAllBytes(), "UTF-8")).isEqualTo(svg);
      }
    }
  }

  private static Transferable clipboard() {
    return WindowDriver.onEvents(
        () -> Toolkit.getDefaultToolkit().getSystemClipboard().getContents(null));
  }

  @Test
  void theSheetLookedAtIsSavedAsTheKindItsNameEndsIn() throws Exception {
    try (WindowDriver window = new WindowDriver(cabin())) {
      window.menu("beside.sheets");
      JList<?> list = window.find("sheets.list", JList.class);
      WindowDriver.until("sheets are laid out", () -> list.getModel().getSize() > 0);
      for (String ending : List.of("pdf", "svg", "png")) {
        Path file = folder.resolve("sheet." + ending);
        window.dialogs().sheet = Optional.of(file);
        window.menu("file.sheet");
        WindowDriver.until("it is written", () -> !window.window().errands().busy());
        assertThat(file).isRegularFile();
      }
      try (var pdf = Loader.loadPDF(folder.resolve("sheet.pdf").toFile())) {
        assertThat(pdf.getNumberOfPages()).isEqualTo(1);
      }
      assertThat(ImageIO.read(folder.resolve("sheet.png").toFile()).getWidth()).isGreaterThan(1000);
      assertThat(Files.readString(folder.resolve("sheet.svg"))).contains("</svg>");
    }
  }

  @Test
  void aPacketThatIsCalledOffLeavesNothingAndTheWindowGoesOn() throws Exception {
    CountDownLatch begun = new CountDownLatch(1);
    CountDownLatch go = new CountDownLatch(1);
    Path to = folder.resolve("packet");
    Files.createDirectories(to);
    Files.writeString(to.resolve("roof.pdf"), "the last one");
    try (WindowDriver window =
        new WindowDriver(
            cabin(),
            (design, request, place, written) -> {
              Path file = place.resolve("roof.pdf");
              Files.writeString(file, "half");
              begun.countDown();
              boolean interrupted = awaited(go);
              written.accept(new Packet.Written(file, 1, 2));
              throw new AssertionError("went on after it was called off: " + interrupted);
            })) {
      window.dialogs().folder = Optional.of(to);
      window.menu("file.packet");
      assertThat(begun.await(20, TimeUnit.SECONDS)).isTrue();
      // The event thread is free: another part is drawn meanwhile.
      assertThat(
              WindowDriver.onEvents(() -> window.find("status.callOff", JButton.class).isShowing()))
          .isTrue();
      window.push("status.callOff");
      go.countDown();
      WindowDriver.until("it has stopped", () -> !window.window().errands().busy());
      until(() -> filesIn(to).equals(List.of("roof.pdf")));
      assertThat(Files.readString(to.resolve("roof.pdf"))).isEqualTo("the last one");
      assertThat(window.dialogs().told).isEmpty();
    }
  }

  private static boolean awaited(CountDownLatch latch) {
    try {
      latch.await(20, TimeUnit.SECONDS);
      return false;
    } catch (InterruptedException e) {
      return true;
    }
  }

  private static void until(java.util.function.BooleanSupplier done) {
    WindowDriver.until("nothing unfinished is left", done);
  }

  private static List<String> filesIn(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(f -> f.getFileName().toString()).sorted().toList();
    } catch (java.io.IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }
}
