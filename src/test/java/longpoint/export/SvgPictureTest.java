package longpoint.export;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.util.List;
import longpoint.drawing.Anchor;
import longpoint.drawing.Ink;
import longpoint.drawing.Layer;
import longpoint.drawing.Mark;
import longpoint.drawing.Page;
import longpoint.drawing.Pen;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.geometry.Ring;
import org.apache.batik.bridge.ExternalResourceSecurity;
import org.apache.batik.bridge.NoLoadExternalResourceSecurity;
import org.apache.batik.bridge.UserAgent;
import org.apache.batik.transcoder.SVGAbstractTranscoder;
import org.apache.batik.transcoder.TranscoderInput;
import org.apache.batik.transcoder.TranscoderOutput;
import org.apache.batik.transcoder.image.ImageTranscoder;
import org.apache.batik.util.ParsedURL;
import org.junit.jupiter.api.Test;

/**
 * Batik as an independent reader: what is painted where. Ten pixels to a millimetre of a page 40 by
 * 30 mm.
 */
class SvgPictureTest {
  private static final Layer INK = new Layer("INK", "Ink", Pen.solid(1), Ink.MAIN);
  private static final Layer DASH = new Layer("DASH", "Dash", Pen.dashed(1), Ink.MAIN);

  @Test
  void aMarkWithoutMirrorImageStandsTheRightWayUp() throws Exception {
    // An L: upright on the left, foot along the bottom.
    BufferedImage picture =
        paint(
            new Mark.Path(
                List.of(new Point(5, 25), new Point(5, 5), new Point(15, 5)), false, INK, ""));
    assertThat(dark(picture, 5, 20)).isTrue();
    assertThat(dark(picture, 12, 5)).isTrue();
    assertThat(dark(picture, 12, 25)).isFalse();
    assertThat(dark(picture, 35, 20)).isFalse();
  }

  @Test
  void arcsBendTheRightWay() throws Exception {
    BufferedImage picture = paint(new Mark.Arc(new Point(10, 10), 8, 0, 90, INK, ""));
    double far = 8 * Math.sqrt(0.5);
    assertThat(dark(picture, 10 + far, 10 + far)).isTrue();
    assertThat(dark(picture, 10 - far, 10 + far)).isFalse();
    assertThat(dark(picture, 10 + far, 10 - far)).isFalse();
  }

  @Test
  void letteringReadsAlongItsLineAndHasTheHeightAsked() throws Exception {
    // Capital height 5 mm on the line y = 10; a capital I is a plain upright in any sans serif.
    BufferedImage picture =
        paint(new Mark.Text(new Point(20, 10), "I", 5, 0, Anchor.MIDDLE, INK, ""));
    int top = 0;
    int bottom = 0;
    for (int y = 299; y >= 0; y--) {
      for (int x = 190; x <= 210; x++) {
        if ((picture.getRGB(x, y) & 0xFF) < 128) {
          top = y;
          bottom = Math.max(bottom, y);
        }
      }
    }
    assertThat(300 - bottom - 1).as("foot on the line").isBetween(98, 102);
    assertThat(bottom - top).as("height of the capital").isBetween(45, 55);
  }

  @Test
  void uprightLetteringReadsFromTheRight() throws Exception {
    BufferedImage picture =
        paint(new Mark.Text(new Point(20, 5), "IIIIIIII", 5, 90, Anchor.START, INK, ""));
    // Runs up from y = 5, its capitals to the left of x = 20.
    assertThat(darkness(picture, 15, 5, 20, 15)).isGreaterThan(0.1);
    assertThat(darkness(picture, 20.5, 5, 26, 15)).isZero();
    assertThat(darkness(picture, 15, 0, 20, 4.5)).isZero();
  }

  @Test
  void fillsLeaveTheirHoles() throws Exception {
    Region ring =
        new Region(
            Ring.of(5, 5, 25, 5, 25, 25, 5, 25), List.of(Ring.of(10, 10, 10, 20, 20, 20, 20, 10)));
    BufferedImage picture = paint(new Mark.Fill(ring, INK, ""));
    assertThat(dark(picture, 7, 15)).isTrue();
    assertThat(dark(picture, 15, 15)).isFalse();
  }

  @Test
  void hiddenLinesAreBroken() throws Exception {
    BufferedImage picture = paint(Mark.Path.line(new Point(2, 15), new Point(38, 15), DASH, ""));
    // 3 mm of line, 1.5 mm of gap.
    double share = darkness(picture, 2, 14.8, 38, 15.2);
    assertThat(share).isBetween(0.6, 0.75);
  }

  private static boolean dark(BufferedImage picture, double x, double y) {
    return (picture.getRGB((int) Math.round(x * 10), 299 - (int) Math.round(y * 10)) & 0xFF) < 128;
  }

  /** Share of dark pixels in a box of the page. */
  private static double darkness(
      BufferedImage picture, double x1, double y1, double x2, double y2) {
    int dark = 0;
    int all = 0;
    for (double x = x1; x < x2; x += 0.1) {
      for (double y = y1; y < y2; y += 0.1) {
        dark += dark(picture, x, y) ? 1 : 0;
        all++;
      }
    }
    return dark / (double) all;
  }

  private static BufferedImage paint(Mark... marks) throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    SvgWriter.write(new Page("", "Test", 40, 30, List.of(marks)), out);
    Painter painter = new Painter();
    painter.addTranscodingHint(SVGAbstractTranscoder.KEY_WIDTH, 400f);
    painter.addTranscodingHint(SVGAbstractTranscoder.KEY_HEIGHT, 300f);
    painter.transcode(
        new TranscoderInput(new ByteArrayInputStream(out.toByteArray())), new TranscoderOutput());
    return painter.picture;
  }

  /** Keeps the picture; loads nothing from outside the file. */
  private static final class Painter extends ImageTranscoder {
    private BufferedImage picture;

    @Override
    public BufferedImage createImage(int width, int height) {
      return new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    }

    @Override
    public void writeImage(BufferedImage image, TranscoderOutput output) {
      picture = image;
    }

    @Override
    protected UserAgent createUserAgent() {
      return new SVGAbstractTranscoderUserAgent() {
        @Override
        public ExternalResourceSecurity getExternalResourceSecurity(
            ParsedURL resource, ParsedURL document) {
          return new NoLoadExternalResourceSecurity();
        }
      };
    }
  }
}
