package longpoint.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.Random;
import java.util.concurrent.CancellationException;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import longpoint.picture.PictureException.Reason;
import longpoint.plan.EncodedImage;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

@Execution(ExecutionMode.CONCURRENT)
class PictureFileTest {
  @TempDir Path folder;

  /** White, the left half of its upper half red. */
  private static BufferedImage marked(int width, int height) {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_3BYTE_BGR);
    Graphics2D g = image.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, width, height);
    g.setColor(Color.RED);
    g.fillRect(0, 0, width / 2, height / 2);
    g.dispose();
    return image;
  }

  private Path file(String name, BufferedImage image, String format) throws IOException {
    Path file = folder.resolve(name);
    ImageIO.write(image, format, file.toFile());
    return file;
  }

  private static BufferedImage unpacked(EncodedImage image) throws IOException {
    return Unpacking.sizes(image).get(0);
  }

  private static boolean red(BufferedImage image, double x, double y) {
    Color c = new Color(image.getRGB((int) (x * image.getWidth()), (int) (y * image.getHeight())));
    return c.getRed() > 200 && c.getGreen() < 80;
  }

  private static void refused(Path file, Reason why) {
    assertThatThrownBy(() -> PictureFile.read(file))
        .isInstanceOfSatisfying(PictureException.class, e -> assertThat(e.reason()).isEqualTo(why));
  }

  @Test
  void aPictureThatFitsIsKeptByteForByte() throws IOException {
    for (String format : new String[] {"png", "jpeg"}) {
      Path file = file("sketch." + format, marked(300, 200), format);
      EncodedImage image = PictureFile.read(file);
      assertThat(image.open().readAllBytes()).isEqualTo(Files.readAllBytes(file));
      assertThat(image.width()).isEqualTo(300);
      assertThat(image.height()).isEqualTo(200);
    }
  }

  @Test
  void aGiantScanIsMadeSmallEnoughAndKeepsItsLines() throws IOException {
    BufferedImage scan = new BufferedImage(9000, 6000, BufferedImage.TYPE_BYTE_BINARY);
    Graphics2D g = scan.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, 9000, 6000);
    g.setColor(Color.BLACK);
    g.drawLine(0, 3001, 9000, 3001); // one pixel, between those a coarse thinning would take
    g.dispose();
    EncodedImage image = PictureFile.read(file("scan.png", scan, "png"));
    assertThat(Math.max(image.width(), image.height())).isLessThanOrEqualTo(4096);
    assertThat(image.width() * 2).isEqualTo(image.height() * 3);
    BufferedImage small = unpacked(image);
    int darkest = 255;
    for (int y = 0; y < small.getHeight(); y++) {
      darkest = Math.min(darkest, small.getRGB(1000, y) & 0xFF);
    }
    assertThat(darkest).isLessThan(230);
  }

  @Test
  void noiseThatPacksBadlyStillFitsAPlanFile() throws IOException {
    BufferedImage noise = new BufferedImage(3000, 3000, BufferedImage.TYPE_3BYTE_BGR);
    Random random = new Random(7);
    for (int y = 0; y < 3000; y++) {
      for (int x = 0; x < 3000; x++) {
        noise.setRGB(x, y, random.nextInt());
      }
    }
    EncodedImage image = PictureFile.read(file("noise.png", noise, "png"));
    assertThat(image.open().readAllBytes().length).isLessThanOrEqualTo(EncodedImage.MOST_BYTES);
  }

  @Test
  void aPhotographStandsTheWayItWasTaken() throws IOException {
    // Orientation 6: the camera was turned, the first row of the file is the right-hand column.
    byte[] plain = Files.readAllBytes(file("photo.jpg", marked(400, 200), "jpeg"));
    Path turned = Files.write(folder.resolve("turned.jpg"), oriented(plain, 6));
    EncodedImage image = PictureFile.read(turned);
    assertThat(image.width()).isEqualTo(200);
    assertThat(image.height()).isEqualTo(400);
    BufferedImage upright = unpacked(image);
    assertThat(red(upright, 0.75, 0.25)).isTrue();
    assertThat(red(upright, 0.25, 0.25)).isFalse();
  }

  /** With an Exif block of one tag after the start of the file. */
  private static byte[] oriented(byte[] jpeg, int orientation) throws IOException {
    ByteArrayOutputStream exif = new ByteArrayOutputStream();
    DataOutputStream out = new DataOutputStream(exif);
    out.write("Exif\0\0MM\0*".getBytes(StandardCharsets.ISO_8859_1));
    out.writeInt(8);
    out.writeShort(1);
    out.writeShort(0x0112);
    out.writeShort(3);
    out.writeInt(1);
    out.writeShort(orientation);
    out.writeShort(0);
    out.writeInt(0);
    ByteArrayOutputStream whole = new ByteArrayOutputStream();
    DataOutputStream file = new DataOutputStream(whole);
    // After the JFIF block, where the platform's reader looks for more blocks.
    int after = 4 + ((jpeg[4] & 0xFF) << 8 | jpeg[5] & 0xFF);
    file.write(jpeg, 0, after);
    file.writeShort(0xFFE1);
    file.writeShort(exif.size() + 2);
    exif.writeTo(file);
    file.write(jpeg, after, jpeg.length - after);
    return whole.toByteArray();
  }

  @Test
  void theFirstPageOfAPdfIsPainted() throws IOException {
    Path file = folder.resolve("survey.pdf");
    try (PDDocument document = new PDDocument()) {
      PDPage page = new PDPage(new PDRectangle(36 * 72, 24 * 72));
      document.addPage(page);
      document.addPage(new PDPage());
      try (PDPageContentStream draw = new PDPageContentStream(document, page)) {
        draw.setNonStrokingColor(Color.RED);
        draw.addRect(0, 12 * 72, 18 * 72, 12 * 72);
        draw.fill();
      }
      document.save(file.toFile());
    }
    EncodedImage image = PictureFile.read(file);
    assertThat(image.width()).isBetween(4000, 4096);
    BufferedImage page = unpacked(image);
    assertThat(red(page, 0.25, 0.25)).isTrue();
    assertThat(red(page, 0.75, 0.75)).isFalse();
  }

  @Test
  void aPdfWithAPasswordOrWithoutAPageIsRefused() throws IOException {
    Path locked = folder.resolve("locked.pdf");
    try (PDDocument document = new PDDocument()) {
      document.addPage(new PDPage());
      document.protect(new StandardProtectionPolicy("owner", "user", new AccessPermission()));
      document.save(locked.toFile());
    }
    refused(locked, Reason.LOCKED);
    Path empty = folder.resolve("empty.pdf");
    try (PDDocument document = new PDDocument()) {
      document.save(empty.toFile());
    }
    refused(empty, Reason.NO_PAGE);
  }

  /** Forty forms, each of which draws the next twice: a million million strokes in 4 kB. */
  private Path endless() throws IOException {
    Path file = folder.resolve("endless.pdf");
    try (PDDocument document = new PDDocument()) {
      PDPage page = new PDPage();
      document.addPage(page);
      PDFormXObject inner = form(document, "0 0 10 10 re f", null);
      for (int i = 0; i < 40; i++) {
        inner = form(document, "/F Do /F Do", inner);
      }
      try (PDPageContentStream draw = new PDPageContentStream(document, page)) {
        draw.drawForm(inner);
      }
      document.save(file.toFile());
    }
    return file;
  }

  private static PDFormXObject form(PDDocument document, String content, PDFormXObject inner)
      throws IOException {
    PDFormXObject form = new PDFormXObject(document);
    form.setBBox(new PDRectangle(100, 100));
    PDResources resources = new PDResources();
    if (inner != null) {
      resources.put(COSName.getPDFName("F"), inner);
    }
    form.setResources(resources);
    try (OutputStream out = form.getStream().createOutputStream()) {
      out.write(content.getBytes(StandardCharsets.US_ASCII));
    }
    return form;
  }

  @Test
  void aPageMadeToTakeForEverIsGivenUp() throws IOException {
    Path file = endless();
    assertThatThrownBy(() -> PageReader.firstPage(file, Duration.ofMillis(300)))
        .isInstanceOfSatisfying(
            PictureException.class, e -> assertThat(e.reason()).isEqualTo(Reason.ENDLESS));
  }

  @Test
  void readingIsCalledOff() throws IOException {
    Path page = endless();
    Path scan = file("scan.png", marked(2000, 2000), "png");
    for (Path file : new Path[] {page, scan}) {
      Thread.currentThread().interrupt();
      try {
        assertThatThrownBy(() -> PictureFile.read(file)).isInstanceOf(CancellationException.class);
      } finally {
        Thread.interrupted();
      }
    }
  }

  @Test
  void whatIsNoPictureIsRefused() throws IOException {
    refused(Files.writeString(folder.resolve("list.png"), "2 x 6, 14 ft"), Reason.OTHER_KIND);
    refused(Files.write(folder.resolve("nothing.jpg"), new byte[0]), Reason.OTHER_KIND);
    refused(Files.writeString(folder.resolve("bad.pdf"), "%PDF-1.7 and no more"), Reason.DAMAGED);
    byte[] whole = Files.readAllBytes(file("whole.png", marked(800, 800), "png"));
    byte[] half = Arrays.copyOf(whole, whole.length / 2);
    refused(Files.write(folder.resolve("half.png"), half), Reason.DAMAGED);
  }

  @Test
  void aFileThatSaysItIsEndlessIsRefusedByItsHeadAlone() throws IOException {
    ByteArrayOutputStream head = new ByteArrayOutputStream();
    DataOutputStream data = new DataOutputStream(head);
    data.writeBytes("IHDR");
    data.writeInt(100_000);
    data.writeInt(100_000);
    data.write(new byte[] {8, 2, 0, 0, 0});
    CRC32 crc = new CRC32();
    crc.update(head.toByteArray());
    ByteArrayOutputStream png = new ByteArrayOutputStream();
    DataOutputStream out = new DataOutputStream(png);
    out.write(new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10});
    out.writeInt(13);
    head.writeTo(out);
    out.writeInt((int) crc.getValue());
    out.writeInt(0);
    out.writeBytes("IDAT");
    out.writeInt(0);
    refused(Files.write(folder.resolve("bomb.png"), png.toByteArray()), Reason.TOO_LARGE);
  }

  @Test
  void aPictureInAPlanThatIsNoneCannotBeUnpacked() {
    EncodedImage lie = new EncodedImage(EncodedImage.Type.PNG, 10, 10, new byte[] {1, 2, 3});
    assertThatThrownBy(() -> Unpacking.sizes(lie)).isInstanceOf(PictureException.class);
  }
}
