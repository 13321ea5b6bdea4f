package longpoint.packet;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import longpoint.drawing.Page;
import longpoint.export.CsvWriter;
import longpoint.export.DxfWriter;
import longpoint.export.HtmlWriter;
import longpoint.export.PdfWriter;
import longpoint.export.PhonePage;
import longpoint.export.SvgWriter;
import longpoint.pipeline.Design;
import longpoint.plan.Plan;
import longpoint.planfile.PlanFile;
import longpoint.planfile.SheetPlan;
import longpoint.sheets.ModelDrawing;
import longpoint.sheets.Paper;
import longpoint.sheets.PaperScale;
import longpoint.sheets.SheetSet;
import longpoint.sheets.Solved;
import longpoint.units.LengthUnit;

/**
 * Writes every output of a design to a folder: the sheets as SVG and together as PDF, a page for
 * phones, the plan in real size as DXF, the figures as text, CSV and JSON, and the plan itself.
 * Files of the same names are written over, others in the folder are left alone. The same design
 * gives the same bytes.
 */
public final class Packet {
  private final Path folder;
  private final String name;
  private final List<Path> files = new ArrayList<>();

  private final Consumer<Path> told;

  private Packet(Path folder, String name, Consumer<Path> told) {
    this.folder = folder;
    this.name = name;
    this.told = told;
  }

  /** Paper for people who draw in a unit: what most of their printers hold. */
  public static Paper paperFor(LengthUnit unit) {
    return unit == LengthUnit.INCH ? Paper.TABLOID : Paper.A3;
  }

  /**
   * Writes the files, making the folder if it is not there.
   *
   * @param name the files begin with, see {@link #baseName}
   * @return the files in the order written
   * @throws IOException if the folder or a file cannot be written
   */
  public static List<Path> write(Design design, Paper paper, Path folder, String name)
      throws IOException {
    return write(design, paper, folder, name, file -> {});
  }

  private static List<Path> write(
      Design design, Paper paper, Path folder, String name, Consumer<Path> told)
      throws IOException {
    Packet packet = new Packet(folder, name, told);
    Files.createDirectories(folder);
    SheetSet set = sheets(design, paper);
    packet.sheets(design.plan(), set.pages());
    packet.handouts(design, set.pages());
    packet.model(design, set.roofScale());
    packet.frame(design, set.frameScale());
    packet.figures(design);
    packet.plan(design.plan());
    return List.copyOf(packet.files);
  }

  /**
   * As {@link #write(Design, Paper, Path, String)}, on the unit's paper and named after the plan.
   */
  public static List<Path> write(Design design, Path folder) throws IOException {
    return write(design, folder, file -> {});
  }

  /**
   * As {@link #write(Design, Path)}, for those who wait for it.
   *
   * @param told each file once it is written; what it throws ends the writing
   */
  public static List<Path> write(Design design, Path folder, Consumer<Path> told)
      throws IOException {
    Plan plan = design.plan();
    return write(design, paperFor(plan.unit()), folder, baseName(plan.title()), told);
  }

  /**
   * What the files of a plan begin with: its own file name without the ending. A name that no file
   * system would mind is made of a title that way too.
   */
  public static String baseName(String fileNameOrTitle) {
    String bare = fileNameOrTitle.replaceFirst("(?i)\\.(json|svg)$", "");
    String safe =
        bare.strip().replaceAll("[^\\p{L}\\p{N}._-]+", "-").replaceAll("^[.-]+|[.-]+$", "");
    return safe.isEmpty() ? "plan" : safe;
  }

  /** Every sheet of a packet, in order, as it is printed and exported. */
  public static List<Page> pages(Design design, Paper paper) {
    return sheets(design, paper).pages();
  }

  /** Every sheet, with the scales of its plans. */
  private static SheetSet sheets(Design design, Paper paper) {
    Solved solved =
        new Solved(
            design.plan(),
            design.surface(),
            design.framing(),
            design.deck(),
            design.chalk(),
            design.takeOff(),
            design.lumber(),
            design.problems());
    return SheetSet.of(solved, paper);
  }

  private void sheets(Plan plan, List<Page> pages) throws IOException {
    // A picture to trace would be in every sheet again, and is not part of the work.
    Plan drawn = plan.withMarkup(plan.markup().withBackdrop(Optional.empty()));
    String carried = SheetPlan.element(drawn);
    for (Page page : pages) {
      String number = page.number().toLowerCase(Locale.ROOT);
      write("-sheet-" + baseName(number) + ".svg", out -> SvgWriter.write(page, carried, out));
    }
  }

  private void handouts(Design design, List<Page> pages) throws IOException {
    PhonePage phone = PhoneFigures.of(design, pages);
    write("-sheets.pdf", out -> PdfWriter.write(pages, phone.title(), out));
    write(".html", out -> HtmlWriter.write(phone, out));
    write("-figures.csv", out -> CsvWriter.write(phone.tables(), out));
  }

  private void model(Design design, PaperScale sheet) throws IOException {
    ModelDrawing model = ModelDrawing.of(design.plan(), design.surface(), sheet);
    LengthUnit unit = design.plan().unit();
    double scale = model.scale().ratio();
    write("-plan.dxf", out -> DxfWriter.write(model.drawing(), unit, scale, out));
  }

  /** A plan without a frame has no CAD file of one. */
  private void frame(Design design, PaperScale sheet) throws IOException {
    if (!design.framing().trusses().isEmpty() || !design.framing().rafters().isEmpty()) {
      ModelDrawing model =
          ModelDrawing.ofFrame(design.plan(), design.surface(), design.framing(), sheet);
      LengthUnit unit = design.plan().unit();
      double scale = model.scale().ratio();
      write("-frame.dxf", out -> DxfWriter.write(model.drawing(), unit, scale, out));
    }
  }

  private void figures(Design design) throws IOException {
    text("-figures.txt", FiguresText.of(design));
    text("-figures.json", FiguresJson.of(design));
  }

  private void plan(Plan plan) throws IOException {
    write("-plan.json", out -> out.write(PlanFile.bytes(plan)));
  }

  private void text(String ending, String text) throws IOException {
    write(ending, out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
  }

  private void write(String ending, Content content) throws IOException {
    Path file = folder.resolve(name + ending);
    try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
      content.writeTo(out);
    }
    files.add(file);
    told.accept(file);
  }

  @FunctionalInterface
  private interface Content {
    void writeTo(OutputStream out) throws IOException;
  }
}
