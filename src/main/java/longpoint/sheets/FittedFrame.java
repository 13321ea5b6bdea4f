package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.drawing.Layer;
import longpoint.drawing.Mark;
import longpoint.drawing.Placement;
import longpoint.drawing.Strokes;
import longpoint.framing.FramingSet;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.plan.Plan;
import longpoint.surface.RoofSurface;

/**
 * The frame at the largest standard scale at which it fits a field of paper with all its marks; of
 * the few largest scales the first that leaves nothing off, else the one that leaves off least.
 */
record FittedFrame(FrameView view, PaperScale scale, FrameBase.Extent extent) {
  /** Scales tried from the first at which everything solid fits. */
  private static final int TRIED = 2;

  /** Share of marks on leaders beyond which a layout is a thicket. */
  private static final double LED = 0.2;

  /** Trusses closer than this on paper leave no room for a mark between them. */
  private static final double PITCH_MM = 4.5;

  /** Whether marks have room between trusses at the largest scale at which the whole fits. */
  static boolean hasRoom(Plan plan, RoofSurface surface, FramingSet framing, Bounds field) {
    Bounds solid = FrameView.solid(plan, FrameBase.around(plan, surface, framing), framing);
    PaperScale scale = scales(plan, solid, field).get(0);
    double pitch = PITCH_MM * scale.unitsPerMm(plan.unit());
    return plan.parts().stream().allMatch(p -> p.frame().spacing() >= pitch);
  }

  /** Whether a crew can read it: nothing left off, few leaders. */
  boolean readable() {
    return view.leftOff() == 0 && view.led() <= LED * view.labels().size();
  }

  /** Where everything stands, without marks, at the largest scale at which it fits. */
  static FittedFrame bare(Plan plan, RoofSurface surface, FramingSet framing, Bounds field) {
    FrameBase base = FrameBase.around(plan, surface, framing);
    Bounds solid = FrameView.solid(plan, base, framing);
    PaperScale scale = scales(plan, solid, field).get(0);
    double unitsPerMm = scale.unitsPerMm(plan.unit());
    double spareX = (field.width() * unitsPerMm - solid.width()) / 2;
    double spareY = (field.height() * unitsPerMm - solid.height()) / 2;
    Bounds limit =
        new Bounds(
            solid.minX() - spareX,
            solid.minY() - spareY,
            solid.maxX() + spareX,
            solid.maxY() + spareY);
    return new FittedFrame(
        FrameView.bare(plan, surface, framing, base, unitsPerMm, limit), scale, base.extent());
  }

  /** As {@link #bare}, or with its marks where what stands around a frame would leave the field. */
  static FittedFrame toDrawOn(Plan plan, RoofSurface surface, FramingSet framing, Bounds field) {
    FittedFrame bare = bare(plan, surface, framing, field);
    return fits(bare.bounds(), field, bare.view().unitsPerMm())
        ? bare
        : of(plan, surface, framing, field);
  }

  static FittedFrame of(Plan plan, RoofSurface surface, FramingSet framing, Bounds field) {
    FrameBase base = FrameBase.around(plan, surface, framing);
    Bounds solid = FrameView.solid(plan, base, framing);
    FittedFrame best = null;
    for (PaperScale scale : scales(plan, solid, field)) {
      FittedFrame fitted = at(scale, plan, surface, framing, base, field, solid);
      if (best == null || fitted.view().leftOff() < best.view().leftOff()) {
        best = fitted;
      }
      if (best.view().leftOff() == 0) {
        break;
      }
    }
    return best;
  }

  /** The drawing as a group in the middle of a field. */
  Mark in(Bounds field) {
    double mmPerUnit = 1 / view.unitsPerMm();
    Point origin = field.middle().minus(bounds().middle().times(mmPerUnit));
    return new Mark.Group("frame", new Placement(origin, mmPerUnit, 0), view.drawing().marks());
  }

  private Bounds bounds() {
    return Strokes.of(view.drawing().marks(), view.unitsPerMm()).bounds();
  }

  static List<PaperScale> scales(Plan plan, Bounds solid, Bounds field) {
    List<PaperScale> fitting =
        PaperScale.of(plan.unit()).stream()
            .filter(s -> fits(solid, field, s.unitsPerMm(plan.unit())))
            .limit(TRIED)
            .toList();
    double ratio =
        plan.unit()
            .toMillimetres(
                Math.max(solid.width() / field.width(), solid.height() / field.height()));
    return fitting.isEmpty() ? List.of(PaperScale.round(ratio)) : fitting;
  }

  /** Lettering may stand in any window of the field's size; failing that, in the centred one. */
  private static FittedFrame at(
      PaperScale scale,
      Plan plan,
      RoofSurface surface,
      FramingSet framing,
      FrameBase base,
      Bounds field,
      Bounds solid) {
    double unitsPerMm = scale.unitsPerMm(plan.unit());
    double spareX = field.width() * unitsPerMm - solid.width();
    double spareY = field.height() * unitsPerMm - solid.height();
    FittedFrame best = null;
    for (double share : new double[] {1, 0.5}) {
      Bounds limit =
          new Bounds(
              solid.minX() - spareX * share,
              solid.minY() - spareY * share,
              solid.maxX() + spareX * share,
              solid.maxY() + spareY * share);
      FrameView.Page page = new FrameView.Page(unitsPerMm, limit, Optional.empty());
      FrameView view = FrameView.within(plan, surface, framing, base, page);
      best = new FittedFrame(view, scale, base.extent());
      if (fits(best.bounds(), field, unitsPerMm)) {
        return best;
      }
    }
    return best;
  }

  private static boolean fits(Bounds box, Bounds field, double unitsPerMm) {
    return box.width() <= field.width() * unitsPerMm && box.height() <= field.height() * unitsPerMm;
  }

  /** Layers that occur, in the order they are explained. */
  List<Layer> layers() {
    List<Layer> used = new ArrayList<>(FrameLayers.ofLayout());
    List<Mark> marks = view.drawing().marks();
    used.remove(FrameLayers.MARK);
    used.removeIf(
        l -> marks.stream().noneMatch(m -> m instanceof Mark.Path p && p.layer().equals(l)));
    return used;
  }
}
