package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import longpoint.drawing.Page;
import longpoint.plan.Plan;
import longpoint.stop.CalledOff;

/**
 * Every sheet of a job in the order it is worked in: cover, roof, walls, trusses, valley sets,
 * restraint, lifts, deck plane by plane, cutting, ladders and sticks, what to order, loads. They
 * are numbered through with plain numbers, so that a dropped stack is soon in order and no number
 * is taken for a plane's letter or a truss's mark.
 *
 * @param pages from the cover on
 * @param scales of its plans
 */
public record SheetSet(List<Page> pages, Scales scales) {
  public SheetSet {
    pages = List.copyOf(pages);
  }

  /** Lays out the sheets. Never fails for what a user can draw. */
  public static SheetSet of(Solved solved, Paper paper) {
    CalledOff.check();
    Plan plan = solved.plan();
    RoofNames names = solved.names();
    SheetBorder border = new SheetBorder(plan, solved.problems(), paper);
    RoofSheets roof = RoofSheets.of(plan, solved.surface(), border);
    LayoutSheets layout = LayoutSheets.of(plan, solved.surface(), solved.framing(), names, border);
    List<Sheet> sheets = new ArrayList<>(roof.sheets());
    sheets.addAll(WallSheets.of(plan, border));
    sheets.addAll(BuiltSheets.of(solved, border));
    sheets.addAll(layout.sheets());
    sheets.addAll(FrameSheets.of(plan, solved.framing(), names, border));
    sheets.addAll(RestraintSheets.of(solved, border));
    sheets.addAll(LiftSheets.of(solved, border));
    sheets.addAll(ChalkSheets.of(plan, solved.deck(), solved.chalk(), names, border));
    sheets.addAll(CuttingSheets.of(plan, solved.deck(), names, border));
    sheets.addAll(StickSheets.of(plan, solved.framing(), names, border));
    sheets.addAll(OrderSheets.of(solved, border));
    sheets.addAll(SupplierSheets.of(solved, border));
    sheets.addAll(LoadSheets.of(solved, border));
    return new SheetSet(numbered(solved, sheets, border), new Scales(roof.scale(), layout.scale()));
  }

  /**
   * Scales of the plans of a set.
   *
   * @param roof of the roof plan
   * @param frame of the frame's layout
   */
  public record Scales(PaperScale roof, PaperScale frame) {}

  /** The scale of the roof plan. */
  public PaperScale roofScale() {
    return scales.roof();
  }

  /** The scales alone: what a drawing in real size is lettered for, without laying out the rest. */
  public static Scales scales(Solved solved, Paper paper) {
    SheetBorder border = new SheetBorder(solved.plan(), solved.problems(), paper);
    return new Scales(
        RoofSheets.of(solved.plan(), solved.surface(), border).scale(),
        LayoutSheets.of(solved.plan(), solved.surface(), solved.framing(), solved.names(), border)
            .scale());
  }

  /** With the cover before them, which lists them under the numbers it moves them to. */
  private static List<Page> numbered(Solved solved, List<Sheet> sheets, SheetBorder border) {
    int before = 1;
    CoverSheets covers = new CoverSheets(solved, border);
    List<Sheet> cover = covers.sheets(sheets, before);
    while (cover.size() > before) {
      before = cover.size();
      cover = covers.sheets(sheets, before);
    }
    List<Sheet> all = new ArrayList<>(cover);
    all.addAll(sheets);
    List<Page> pages = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      pages.add(border.page(all.get(i), i + 1, all.size()));
    }
    return pages;
  }
}
