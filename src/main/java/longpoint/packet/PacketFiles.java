package longpoint.packet;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import longpoint.drawing.Page;
import longpoint.export.CsvWriter;
import longpoint.export.DxfWriter;
import longpoint.export.GlbWriter;
import longpoint.export.HtmlWriter;
import longpoint.export.ObjWriter;
import longpoint.export.PdfWriter;
import longpoint.export.PhonePage;
import longpoint.export.Solid;
import longpoint.export.SvgWriter;
import longpoint.export.Table;
import longpoint.export.Workbook;
import longpoint.export.XlsxWriter;
import longpoint.export.ZipWriter;
import longpoint.pipeline.Design;
import longpoint.plan.Plan;
import longpoint.planfile.PlanFile;
import longpoint.planfile.SheetPlan;
import longpoint.sheets.ModelDrawing;
import longpoint.sheets.PaperScale;
import longpoint.sheets.SheetSet;
import longpoint.sheets.UnfoldedPlanes;
import longpoint.units.LengthUnit;

/** Makes the files of a packet ready to be written; what is not asked for is not worked out. */
final class PacketFiles {
  private final Design design;
  private final Plan plan;
  private final Request request;
  private final String name;
  private final List<PacketFile> files = new ArrayList<>();

  private PacketFiles(Design design, Request request, String name) {
    this.design = request.language().map(design::spoken).orElse(design);
    this.plan = design.plan();
    this.request = request;
    this.name = name;
  }

  /**
   * Files in the order they are handed over.
   *
   * @param name the files begin with
   */
  static List<PacketFile> of(Design design, Request request, String name) {
    PacketFiles packet = new PacketFiles(design, request, name);
    packet.add();
    return List.copyOf(packet.files);
  }

  private void add() {
    if (asks(Output.PDF, Output.HTML, Output.SVG)) {
      SheetSet set = Packet.sheets(design, request.paper());
      sheets(set.pages());
      handouts(set.pages());
      models(set.scales());
    } else if (asks(Output.DXF)) {
      models(SheetSet.scales(Packet.solved(design), request.paper()));
    }
    lists();
    solid();
    file(
        Output.JSON, "-figures.json", text(() -> FiguresJson.of(design, design.plan().language())));
    file(Output.PLAN, "-plan.json", out -> out.write(PlanFile.bytes(plan)));
  }

  private boolean asks(Output... any) {
    return Set.of(any).stream().anyMatch(request.outputs()::contains);
  }

  private void models(SheetSet.Scales scales) {
    plan(scales.roof());
    frame(scales.frame());
    unfolded(scales.roof());
  }

  private void sheets(List<Page> pages) {
    // A picture to trace would be in every sheet again, and is not part of the work.
    Plan drawn = plan.withMarkup(plan.markup().withBackdrop(Optional.empty()));
    String carried = SheetPlan.element(drawn);
    for (Page page : pages) {
      String number = page.number().toLowerCase(Locale.ROOT);
      file(
          Output.SVG,
          "-sheet-" + Packet.baseName(number) + ".svg",
          out -> SvgWriter.write(page, carried, out));
    }
  }

  private void handouts(List<Page> pages) {
    PhonePage phone = PhoneFigures.of(design, pages);
    file(
        Output.PDF,
        "-sheets.pdf",
        out -> PdfWriter.write(pages, phone.title(), phone.language(), out));
    file(Output.HTML, ".html", out -> HtmlWriter.write(phone, out));
  }

  private void plan(PaperScale sheet) {
    model("-plan.dxf", () -> ModelDrawing.of(design.plan(), design.surface(), sheet));
  }

  /** A plan without a frame has no CAD file of one. */
  private void frame(PaperScale sheet) {
    if (!design.framing().trusses().isEmpty() || !design.framing().rafters().isEmpty()) {
      model(
          "-frame.dxf",
          () -> ModelDrawing.ofFrame(design.plan(), design.surface(), design.framing(), sheet));
    }
  }

  private void unfolded(PaperScale sheet) {
    if (!design.deck().planes().isEmpty()) {
      model(
          "-planes.dxf",
          () ->
              UnfoldedPlanes.of(
                  design.plan(), design.surface(), design.deck(), design.chalk(), sheet));
    }
  }

  /** Laid out when it is written, side by side with the others. */
  private void model(String ending, Supplier<ModelDrawing> drawn) {
    LengthUnit unit = design.plan().unit();
    file(
        Output.DXF,
        ending,
        out -> {
          ModelDrawing model = drawn.get();
          DxfWriter.write(model.drawing(), unit, model.scale().ratio(), out);
        });
  }

  private void lists() {
    if (asks(Output.XLSX, Output.CSV)) {
      List<Table> tables = FiguresText.tables(design);
      Plan spoken = design.plan();
      String lengths = FiguresText.lengths(spoken);
      Workbook book =
          new Workbook(
              spoken.language(),
              FiguresText.title(spoken),
              List.of(lengths),
              FiguresText.cautions(spoken),
              tables);
      file(Output.XLSX, "-lists.xlsx", out -> XlsxWriter.write(book, out));
      file(Output.CSV, "-figures.csv", out -> CsvWriter.write(tables, out));
    }
    if (!design.onSite().trusses().isEmpty()) {
      file(Output.DIFFERENCES, "-supplier.csv", out -> SupplierDifferences.write(design, out));
    }
    file(Output.TXT, "-figures.txt", text(() -> FiguresText.of(design)));
  }

  private void solid() {
    if (asks(Output.GLB, Output.OBJ, Output.DXF3D)) {
      Solid house = HouseModel.of(design);
      file(Output.GLB, "-house.glb", out -> GlbWriter.write(house, out));
      file(Output.DXF3D, "-house.dxf", out -> DxfWriter.write(house, out));
      file(Output.OBJ, "-house.obj", out -> ObjWriter.write(house, out));
    }
  }

  private static ZipWriter.Content text(Supplier<String> text) {
    return out -> out.write(text.get().getBytes(StandardCharsets.UTF_8));
  }

  private void file(Output output, String ending, ZipWriter.Content content) {
    if (asks(output)) {
      files.add(new PacketFile(name + ending, output, content));
    }
  }
}
