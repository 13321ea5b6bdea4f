package longpoint.desktop.paper;

import java.awt.print.PageFormat;
import java.awt.print.Paper;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.print.PrintService;
import javax.print.attribute.PrintRequestAttributeSet;
import javax.print.attribute.standard.Media;
import javax.print.attribute.standard.MediaSize;
import javax.print.attribute.standard.MediaSizeName;

/** The papers a printer holds, told apart by size: one size goes by several names. */
final class PrinterPaper {
  /** Sizes of paper that differ by less are the same, millimetres. */
  private static final double SAME = 1;

  /** Along every edge of paper a sheet was not made for, since few printers reach the edge. */
  private static final double MARGIN_MM = 6.35;

  private final PrintService printer;

  PrinterPaper(PrintService printer) {
    this.printer = printer;
  }

  /** What this printer calls paper of a size, if it holds any. */
  Optional<MediaSizeName> named(double widthMm, double heightMm) {
    return held().filter(name -> isSize(name, widthMm, heightMm)).findFirst();
  }

  Optional<MediaSizeName> named(longpoint.sheets.Paper paper) {
    return named(paper.widthMm(), paper.heightMm());
  }

  /**
   * The paper to lay sheets out for: the wanted one if the printer holds it, else the one it is
   * loaded with, else the largest of ours it holds; if none, the wanted one all the same.
   */
  longpoint.sheets.Paper best(longpoint.sheets.Paper wanted) {
    if (named(wanted).isPresent()) {
      return wanted;
    }
    Object loaded = printer.getDefaultAttributeValue(Media.class);
    Optional<longpoint.sheets.Paper> usual =
        loaded instanceof MediaSizeName name ? ours(name) : Optional.empty();
    return usual
        .or(
            () ->
                Stream.of(longpoint.sheets.Paper.values())
                    .filter(p -> named(p).isPresent())
                    .max((a, b) -> Double.compare(a.widthMm(), b.widthMm())))
        .orElse(wanted);
  }

  /** The paper that was asked for, or the one the printer takes unasked. */
  Optional<MediaSizeName> asked(PrintRequestAttributeSet wanted) {
    Object media = wanted.get(Media.class);
    Object taken = media == null ? printer.getDefaultAttributeValue(Media.class) : media;
    return taken instanceof MediaSizeName name ? Optional.of(name) : Optional.empty();
  }

  /** Which of the papers sheets are laid out for this is. */
  static Optional<longpoint.sheets.Paper> ours(MediaSizeName name) {
    return Stream.of(longpoint.sheets.Paper.values())
        .filter(p -> isSize(name, p.widthMm(), p.heightMm()))
        .findFirst();
  }

  static boolean isSize(MediaSizeName name, double widthMm, double heightMm) {
    MediaSize size = MediaSize.getMediaSizeForName(name);
    return size != null
        && Math.abs(size.getX(MediaSize.MM) - Math.min(widthMm, heightMm)) < SAME
        && Math.abs(size.getY(MediaSize.MM) - Math.max(widthMm, heightMm)) < SAME;
  }

  /** Some paper lying, with a margin, to make sheets of another size smaller on. */
  static Optional<PageFormat> lying(MediaSizeName name) {
    return Optional.ofNullable(MediaSize.getMediaSizeForName(name)).map(PrinterPaper::lying);
  }

  private static PageFormat lying(MediaSize size) {
    double margin = MARGIN_MM * SheetPrint.POINTS_PER_MM;
    Paper paper = new Paper();
    paper.setSize(
        size.getX(MediaSize.MM) * SheetPrint.POINTS_PER_MM,
        size.getY(MediaSize.MM) * SheetPrint.POINTS_PER_MM);
    paper.setImageableArea(
        margin, margin, paper.getWidth() - 2 * margin, paper.getHeight() - 2 * margin);
    PageFormat format = new PageFormat();
    format.setPaper(paper);
    format.setOrientation(PageFormat.LANDSCAPE);
    return format;
  }

  private Stream<MediaSizeName> held() {
    Object media = printer.getSupportedAttributeValues(Media.class, null, null);
    List<?> all = media instanceof Object[] many ? Arrays.asList(many) : List.of();
    return all.stream().filter(MediaSizeName.class::isInstance).map(MediaSizeName.class::cast);
  }
}
