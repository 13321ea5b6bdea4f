package longpoint.surface;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;

/**
 * Parts whose roofs can have to do with each other: one's roof, run on beyond its open sides, comes
 * over the other's own ground. What happens in one cluster changes nothing in another, so that each
 * is joined, and remembered, by itself.
 */
final class Clusters {
  private final List<PartRoof> roofs;
  private final List<Envelope> own = new ArrayList<>();
  private final List<Envelope> reach = new ArrayList<>();
  private final int[] leader;

  private Clusters(List<PartRoof> roofs, double near) {
    this.roofs = roofs;
    this.leader = new int[roofs.size()];
    for (int i = 0; i < roofs.size(); i++) {
      leader[i] = i;
      Envelope ground = new Envelope(roofs.get(i).own().getEnvelopeInternal());
      ground.expandToInclude(roofs.get(i).walls().getEnvelopeInternal());
      ground.expandBy(near);
      Envelope all = new Envelope(ground);
      roofs.get(i).pieces().forEach(p -> all.expandToInclude(p.ground().getEnvelopeInternal()));
      own.add(ground);
      reach.add(all);
    }
  }

  /**
   * The clusters.
   *
   * @param near roofs no further apart than this touch
   * @return places in the list, each cluster in rising order, clusters by their first member
   */
  static List<List<Integer>> of(List<PartRoof> roofs, double near) {
    Clusters clusters = new Clusters(roofs, near);
    for (int i = 0; i < roofs.size(); i++) {
      for (int j = i + 1; j < roofs.size(); j++) {
        if (clusters.meet(i, j)) {
          clusters.join(i, j);
        }
      }
    }
    return clusters.lists();
  }

  private boolean meet(int i, int j) {
    return reach.get(i).intersects(own.get(j)) || reach.get(j).intersects(own.get(i));
  }

  private void join(int i, int j) {
    int a = Math.min(leader[i], leader[j]);
    int b = Math.max(leader[i], leader[j]);
    for (int k = 0; k < leader.length; k++) {
      leader[k] = leader[k] == b ? a : leader[k];
    }
  }

  private List<List<Integer>> lists() {
    List<List<Integer>> lists = new ArrayList<>();
    for (int i = 0; i < roofs.size(); i++) {
      if (leader[i] == i) {
        List<Integer> members = new ArrayList<>();
        for (int j = i; j < roofs.size(); j++) {
          if (leader[j] == i) {
            members.add(j);
          }
        }
        lists.add(members);
      }
    }
    return lists;
  }
}
