package longpoint.framing.stick;

import java.util.List;
import java.util.Objects;
import longpoint.geometry.Segment;

/**
 * One rafter to cut and how many of it.
 *
 * @param mark letters of its kind and a number, unique in the plan
 * @param part id of its part
 * @param run id of its run
 * @param quantity how many
 * @param planRun theoretical, from wall face or valley to the middle of what it meets
 * @param rise over that run
 * @param lineLength theoretical, along the slope
 * @param shortenFoot plan length off the foot
 * @param shortenHead plan length off the head
 * @param tail along the slope, past the wall face
 * @param length to cut, along the top edge between its two plumb cuts on the centre line
 * @param plumbCut degrees from the edge
 * @param levelCut degrees from the edge
 * @param sideCutFoot on the top edge, degrees from the length; 90 is square
 * @param sideCutHead the same at the head
 * @param drop of a hip whose edge is not backed; 0 for others
 * @param places theoretical lines in plan, foot to head
 */
public record Rafter(
    String mark,
    RafterKind kind,
    String part,
    String run,
    int quantity,
    double planRun,
    double rise,
    double lineLength,
    double shortenFoot,
    double shortenHead,
    double tail,
    double length,
    double plumbCut,
    double levelCut,
    double sideCutFoot,
    double sideCutHead,
    double drop,
    List<Segment> places) {
  public Rafter {
    Objects.requireNonNull(mark);
    Objects.requireNonNull(kind);
    places = List.copyOf(places);
  }
}
