package longpoint.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.StreamSupport;
import longpoint.drawing.Anchor;
import longpoint.drawing.Ink;
import longpoint.drawing.Layer;
import longpoint.drawing.Lettering;
import longpoint.drawing.Mark;
import longpoint.drawing.Page;
import longpoint.drawing.Pen;
import longpoint.drawing.Placement;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.geometry.Ring;
import longpoint.sheets.GableHouse;
import longpoint.sheets.Paper;
import longpoint.sheets.SheetSet;
import longpoint.sheets.Solved;
import longpoint.wording.Language;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * PDFs read back, and painted at ten pixels to a millimetre of a page 40 by 30 mm. The size of a
 * point, 1/72 inch, is that of ISO 32000-1, 8.3.2.3.
 */
class PdfWriterTest {
  private static final Layer INK = new Layer("INK", "Ink", Pen.solid(1), Ink.MAIN);
  private static final Layer DASH = new Layer("DASH", "Dash", Pen.dashed(1), Ink.MAIN);
  private static final Layer PURPLE = new Layer("PURPLE", "Purple", Pen.solid(1), Ink.ALERT);

  /** A hair above 254 dots an inch, since the reader rounds a picture's size down. */
  private static final float TEN_PER_MM = 254.002f;

  private static byte[] bytes(String title, Page... pages) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PdfWriter.write(List.of(pages), title, Language.ENGLISH, out);
    return out.toByteArray();
  }

  private static Page page(Mark... marks) {
    return new Page("R-1", "Test", 40, 30, List.of(marks));
  }

  @Test
  void everySheetHasItsOwnPaperAndBookmark() throws IOException {
    Page second = new Page("R-2", "Long", 1189, 841, List.of());
    try (PDDocument pdf = Loader.loadPDF(bytes("Two sheets", page(), second))) {
      assertThat(pdf.getNumberOfPages()).isEqualTo(2);
      assertThat(pdf.getPage(0).getMediaBox().getWidth() / 72 * 25.4).isCloseTo(40, within(1e-4));
      assertThat(pdf.getPage(1).getMediaBox().getWidth() / 72 * 25.4).isCloseTo(1189, within(1e-3));
      List<String> bookmarks = new ArrayList<>();
      for (PDOutlineItem i : pdf.getDocumentCatalog().getDocumentOutline().children()) {
        bookmarks.add(i.getTitle() + " > " + pdf.getPages().indexOf(i.findDestinationPage(pdf)));
      }
      assertThat(bookmarks).containsExactly("R-1 Test > 0", "R-2 Long > 1");
      assertThat(pdf.getDocumentCatalog().getPageLabels().getLabelsByPageIndices())
          .containsExactly("R-1", "R-2");
      assertThat(pdf.getDocumentInformation().getTitle()).isEqualTo("Two sheets");
      assertThat(pdf.getDocumentInformation().getCreationDate()).isNull();
      assertThat(pdf.getDocumentCatalog().getViewerPreferences().getPrintScaling())
          .isEqualTo("None");
    }
  }

  @Test
  void theFontIsInTheFileCutDownToTheLettersUsed() throws IOException {
    byte[] bytes = bytes("t", page(text("Ridge 12", 2.5, Anchor.START)));
    assertThat(bytes.length).isLessThan(20_000);
    try (PDDocument pdf = Loader.loadPDF(bytes)) {
      PDPage sheet = pdf.getPage(0);
      List<COSName> names =
          StreamSupport.stream(sheet.getResources().getFontNames().spliterator(), false).toList();
      assertThat(names).hasSize(1);
      PDFont font = sheet.getResources().getFont(names.get(0));
      assertThat(font.isEmbedded()).isTrue();
      assertThat(font.getName()).matches("[A-Z]{6}\\+LiberationSans");
    }
  }

  /** A line of 100 ft at a 48th is 25 in of paper, an architect's quarter-inch scale. */
  @Test
  void aLineHasItsLengthAtTheScaleOfTheSheet() throws IOException {
    double scale = 25.4 / 48;
    Mark wall = Mark.Path.line(new Point(0, 0), new Point(1200, 0), INK, "w");
    Mark.Group plan =
        new Mark.Group("plan", new Placement(new Point(20, 20), scale, 0), List.of(wall));
    byte[] bytes = bytes("t", new Page("R-1", "Wide", 700, 40, List.of(plan)));
    try (PDDocument pdf = Loader.loadPDF(bytes)) {
      BufferedImage picture =
          new PDFRenderer(pdf).renderImageWithDPI(0, TEN_PER_MM, ImageType.GRAY);
      assertThat(picture.getWidth()).isEqualTo(7000);
      int row = 400 - 200;
      int from = 0;
      while (!dark(picture, from, row)) {
        from++;
      }
      int to = from;
      while (dark(picture, to, row)) {
        to++;
      }
      // The pen's round ends add half its width, 0.5 mm, at either end.
      assertThat(from).isBetween(194, 196);
      assertThat(to - from).isBetween(6359, 6361);
    }
  }

  @Test
  void letteringIsFoundAsTextAndFitsTheRoomTheLayoutGaveIt() throws IOException {
    String words = "office valley fill 12' 3 1/2\" 26.6\u00b0 \u00e9\u00df";
    double heightMm = 2.5;
    byte[] bytes = bytes("t", page(text(words, heightMm, Anchor.START)));
    List<TextPosition> letters = new ArrayList<>();
    try (PDDocument pdf = Loader.loadPDF(bytes)) {
      PDFTextStripper reader =
          new PDFTextStripper() {
            @Override
            protected void processTextPosition(TextPosition letter) {
              letters.add(letter);
              super.processTextPosition(letter);
            }
          };
      assertThat(reader.getText(pdf).strip()).isEqualTo(words);
    }
    TextPosition last = letters.get(letters.size() - 1);
    double end = (last.getXDirAdj() + last.getWidthDirAdj()) / 72 * 25.4;
    assertThat(end - 5).isLessThanOrEqualTo(Lettering.width(words, heightMm) + 0.01);
    assertThat(end - 5).isGreaterThan(0.8 * Lettering.width(words, heightMm));
  }

  @Test
  void capitalsHaveTheHeightAskedOnTheLineAsked() throws IOException {
    BufferedImage picture =
        paint(new Mark.Text(new Point(20, 10), "H", 5, 0, Anchor.MIDDLE, INK, ""));
    assertThat(darkness(picture, 18, 10.2, 22, 14.8)).isGreaterThan(0.15);
    assertThat(darkness(picture, 10, 0, 30, 9.8)).isZero();
    assertThat(darkness(picture, 10, 15.2, 30, 25)).isZero();
    assertThat(darkness(picture, 17, 14.6, 23, 14.9)).isGreaterThan(0.1);
    assertThat(darkness(picture, 17, 10.1, 23, 10.4)).isGreaterThan(0.1);
  }

  @Test
  void aMarkWithoutMirrorImageStandsTheRightWayUp() throws IOException {
    // An L: upright on the left, foot along the bottom.
    BufferedImage picture =
        paint(
            new Mark.Path(
                List.of(new Point(5, 25), new Point(5, 5), new Point(15, 5)), false, INK, ""));
    assertThat(darkness(picture, 4.7, 15, 5.3, 24)).isEqualTo(1);
    assertThat(darkness(picture, 6, 4.7, 14, 5.3)).isEqualTo(1);
    assertThat(darkness(picture, 6, 6, 40, 30)).isZero();
  }

  @Test
  void arcsBendTheRightWayAndKeepToTheirCircle() throws IOException {
    BufferedImage quarter = paint(new Mark.Arc(new Point(10, 10), 8, 0, 90, INK, ""));
    double far = 8 * Math.sqrt(0.5);
    assertThat(darkness(quarter, 9.8 + far, 9.8 + far, 10.2 + far, 10.2 + far)).isEqualTo(1);
    assertThat(darkness(quarter, 0, 0, 9, 30)).isZero();
    BufferedImage back = paint(new Mark.Arc(new Point(20, 15), 8, 90, -270, INK, ""));
    for (int degrees = -178; degrees <= 88; degrees += 7) {
      assertThat(onCircle(back, degrees)).as(degrees + "°").isTrue();
    }
    assertThat(onCircle(back, 135)).isFalse();
    BufferedImage whole = paint(new Mark.Arc(new Point(20, 15), 8, 30, 360, INK, ""));
    for (int degrees = 0; degrees < 360; degrees += 11) {
      assertThat(onCircle(whole, degrees)).as(degrees + "°").isTrue();
    }
  }

  private static boolean onCircle(BufferedImage picture, double degrees) {
    double radians = Math.toRadians(degrees);
    double x = 20 + 8 * Math.cos(radians);
    double y = 15 + 8 * Math.sin(radians);
    return dark(picture, (int) (x * 10), 299 - (int) (y * 10));
  }

  @Test
  void uprightLetteringReadsFromTheRight() throws IOException {
    BufferedImage picture =
        paint(new Mark.Text(new Point(20, 5), "IIIIIIII", 5, 90, Anchor.START, INK, ""));
    assertThat(darkness(picture, 15, 5, 20, 15)).isGreaterThan(0.1);
    assertThat(darkness(picture, 20.5, 0, 40, 30)).isZero();
    assertThat(darkness(picture, 15, 0, 20, 4.5)).isZero();
  }

  @Test
  void fillsLeaveTheirHolesAndLinesTheirGaps() throws IOException {
    Region ring =
        new Region(
            Ring.of(5, 5, 25, 5, 25, 25, 5, 25), List.of(Ring.of(10, 10, 10, 20, 20, 20, 20, 10)));
    BufferedImage fill = paint(new Mark.Fill(ring, INK, ""));
    assertThat(darkness(fill, 6, 11, 9, 19)).isEqualTo(1);
    assertThat(darkness(fill, 11, 11, 19, 19)).isZero();
    BufferedImage dashes = paint(Mark.Path.line(new Point(2, 15), new Point(38, 15), DASH, ""));
    // 3 mm of line, 1.5 mm of gap.
    assertThat(darkness(dashes, 2, 14.8, 38, 15.2)).isBetween(0.6, 0.75);
  }

  @Test
  void inksAreThoseOfThePaper() throws IOException {
    BufferedImage picture =
        paint(
            Mark.Path.line(new Point(2, 10), new Point(38, 10), INK, ""),
            Mark.Path.line(new Point(2, 20), new Point(38, 20), PURPLE, ""));
    assertThat(picture.getRGB(200, 100) & 0xFFFFFF).isEqualTo(Ink.ALERT.rgb());
    assertThat(picture.getRGB(200, 200) & 0xFFFFFF).isEqualTo(Ink.MAIN.rgb());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "</text><script>alert(1)</script>",
        "a\u0000b\u0008\ud800c\ufffed\te\nf",
        "屋根 é e\u0301 \ud83c\udfe0 \u202e abc",
        ") Tj ET (",
        "%s %d %n \\n \\) (",
        ""
      })
  void hostileTextNeverStopsAFile(String hostile) throws IOException {
    Page page = new Page("", hostile, 40, 30, List.of(text(hostile, 2.5, Anchor.CENTRE)));
    try (PDDocument pdf = Loader.loadPDF(bytes(hostile, page))) {
      assertThat(new PDFTextStripper().getText(pdf)).doesNotContain("\u0000", "\u202e");
      assertThat(pdf.getDocumentInformation().getTitle()).isEqualTo(XmlText.allowed(hostile));
    }
  }

  @Test
  void lettersTheFontLacksBecomeBoxes() throws IOException {
    byte[] bytes = bytes("t", page(text("Dach \u5c4b 3 \u0007 e\u0301", 2.5, Anchor.START)));
    try (PDDocument pdf = Loader.loadPDF(bytes)) {
      assertThat(new PDFTextStripper().getText(pdf).strip())
          .isEqualTo("Dach \u25a1 3 \u25a1 \u00e9");
    }
  }

  @Test
  void sameSheetsSameBytes() throws IOException {
    SheetSet sheet = SheetSet.of(Solved.roof(GableHouse.PLAN, GableHouse.SURFACE), Paper.A3);
    Page[] pages = sheet.pages().toArray(Page[]::new);
    assertThat(bytes("t", pages)).isEqualTo(bytes("t", pages));
  }

  @Test
  void aFullDiskIsSaid() {
    OutputStream full =
        new OutputStream() {
          @Override
          public void write(int b) throws IOException {
            throw new IOException("no space left");
          }
        };
    assertThatThrownBy(() -> PdfWriter.write(List.of(page()), "t", Language.ENGLISH, full))
        .isInstanceOf(IOException.class)
        .hasMessage("no space left");
  }

  private static Mark text(String words, double heightMm, Anchor anchor) {
    return new Mark.Text(new Point(5, 15), words, heightMm, 0, anchor, INK, "");
  }

  private static BufferedImage paint(Mark... marks) throws IOException {
    try (PDDocument pdf = Loader.loadPDF(bytes("t", page(marks)))) {
      return new PDFRenderer(pdf).renderImageWithDPI(0, TEN_PER_MM, ImageType.RGB);
    }
  }

  private static boolean dark(BufferedImage picture, int column, int row) {
    return (picture.getRGB(column, row) & 0xFF) < 128;
  }

  /** Share of dark pixels in a box of the page. */
  private static double darkness(
      BufferedImage picture, double x1, double y1, double x2, double y2) {
    int dark = 0;
    int all = 0;
    for (int x = (int) Math.round(x1 * 10); x < Math.round(x2 * 10); x++) {
      for (int y = (int) Math.round(y1 * 10); y < Math.round(y2 * 10); y++) {
        dark += dark(picture, x, 299 - y) ? 1 : 0;
        all++;
      }
    }
    return dark / (double) all;
  }
}
