package longpoint.framing;

import java.util.List;
import java.util.Optional;
import longpoint.framing.edge.EdgeBoard;
import longpoint.framing.edge.LevelFascia;
import longpoint.framing.gable.GableWall;
import longpoint.framing.gable.HighWall;
import longpoint.framing.gable.Ladder;
import longpoint.framing.run.Mouth;
import longpoint.framing.run.RunProposal;
import longpoint.framing.stick.Rafter;
import longpoint.framing.stick.RafterTape;
import longpoint.framing.stick.RoofOpening;
import longpoint.framing.truss.Girder;
import longpoint.framing.truss.RidgeBlocks;
import longpoint.framing.truss.TapeMarks;
import longpoint.framing.truss.Truss;
import longpoint.framing.truss.TrussKind;
import longpoint.framing.truss.TrussMark;
import longpoint.framing.valley.ValleySet;
import longpoint.framing.valley.ValleyTruss;
import longpoint.geometry.Point;
import longpoint.plan.Problem;

/**
 * Every stick of the frame with its place and size. Lengths in plan units, not rounded. Layout
 * only: the truss supplier's documents, the local code and licensed practice rule.
 *
 * @param trusses every truss in its place, valley trusses included
 * @param marks every truss to order and how many
 * @param tapes marks for the plates of each run
 * @param girders trusses that carry others, and their hangers
 * @param valleySets one for each meeting of runs that has one
 * @param ridgeBlocks blocks between trusses
 * @param ladders one for each overhanging rake
 * @param gableWalls studs of gable walls under rafters
 * @param highWalls studs and plates of the high walls of sheds
 * @param rafters every rafter to cut and how many
 * @param rafterTapes where the rafters of each wall stand
 * @param openings of dormers in roofs of rafters
 * @param fascia boards along eaves and rakes
 * @param levelFascias neighbouring eaves whose fascias differ in height, with cures
 * @param proposals how outlines with several legs were split
 * @param mouths where tails and deck of a lower roof stop at the wall
 */
public record FramingSet(
    List<Truss> trusses,
    List<TrussMark> marks,
    List<TapeMarks> tapes,
    List<Girder> girders,
    List<ValleySet> valleySets,
    List<RidgeBlocks> ridgeBlocks,
    List<Ladder> ladders,
    List<GableWall> gableWalls,
    List<HighWall> highWalls,
    List<Rafter> rafters,
    List<RafterTape> rafterTapes,
    List<RoofOpening> openings,
    List<EdgeBoard> fascia,
    List<LevelFascia> levelFascias,
    List<RunProposal> proposals,
    List<Mouth> mouths,
    List<Problem> problems) {
  /** No frame at all. */
  public static final FramingSet NONE =
      new FramingSet(
          List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(),
          List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(),
          List.of());

  public FramingSet {
    trusses = List.copyOf(trusses);
    marks = List.copyOf(marks);
    tapes = List.copyOf(tapes);
    girders = List.copyOf(girders);
    valleySets = List.copyOf(valleySets);
    ridgeBlocks = List.copyOf(ridgeBlocks);
    ladders = List.copyOf(ladders);
    gableWalls = List.copyOf(gableWalls);
    highWalls = List.copyOf(highWalls);
    rafters = List.copyOf(rafters);
    rafterTapes = List.copyOf(rafterTapes);
    openings = List.copyOf(openings);
    fascia = List.copyOf(fascia);
    levelFascias = List.copyOf(levelFascias);
    proposals = List.copyOf(proposals);
    mouths = List.copyOf(mouths);
    problems = List.copyOf(problems);
  }

  /**
   * The truss that a row of a valley set tells of; a run may have several sets.
   *
   * @return empty where the wing is framed with rafters and none is ordered
   */
  public Optional<Truss> valleyTruss(ValleySet set, ValleyTruss row) {
    double thickness = set.site().thickness();
    Point left = set.axes().at(row.x() - thickness / 2, row.left());
    return trusses.stream()
        .filter(t -> t.kind() == TrussKind.VALLEY && t.run().equals(set.upper()))
        .filter(t -> t.from().distance(left) < thickness)
        .findFirst();
  }
}
