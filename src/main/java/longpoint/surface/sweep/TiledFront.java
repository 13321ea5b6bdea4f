package longpoint.surface.sweep;

import java.util.Arrays;
import longpoint.stop.CalledOff;

/**
 * Sweeps a front with the ground before it cut into tiles. Whatever is about to happen on the
 * front, a tile runs out of area first, and each tile's time is known from its three corners alone;
 * so only the neighbourhood of an event is ever looked at.
 *
 * <ol>
 *   <li>{@link #collect}: the tiles that run out at the next time
 *   <li>{@link Contacts}: what touches among their corners, sorted out as by {@link WholeFront}
 *   <li>{@link Mending#rename}: tiles around corners that ended go over to their successors
 *   <li>{@link Mending#fill}: the hole left by the tiles that ran out is tiled anew
 *   <li>{@link #schedule}: new times for the tiles that changed
 * </ol>
 *
 * <p>Where nothing touches, a tile has run out because a corner passes an inner edge: the hole is
 * that tile with its neighbour across the edge, and filling it swaps the edge. Tiles are only a way
 * of finding events; the roof depends on the front alone.
 */
final class TiledFront {
  private final Front front;
  private final Tiles tiles;
  private final TileClock clock;
  private final Contacts contacts;
  private final Mending mending;
  private final Agenda agenda = new Agenda();

  /** Events nearer to each other than this are at one time. */
  private final double together;

  private final IntList later = new IntList();
  private final double reach;
  private int[] seen;
  private int[] walked;

  TiledFront(Front front, Tiles tiles, double reach) {
    this.front = front;
    this.tiles = tiles;
    this.clock = new TileClock(front, tiles, reach);
    this.contacts = new Contacts(front, reach);
    this.mending = new Mending(front, tiles, clock);
    this.reach = reach;
    this.together = reach / front.sides.fastest();
    this.seen = new int[front.in.length];
    this.walked = new int[front.in.length];
  }

  /** Sweeps until nothing is left. Returns the number of a side near the trouble, or -1. */
  int run() {
    double now = 0;
    int idle = 0;
    int pavings = 0;
    scheduleAll(now);
    while (front.living > 0) {
      CalledOff.check();
      double next = agenda.firstTime();
      idle = next > now || front.ended > 0 ? 0 : idle + 1;
      front.stranded = agenda.isEmpty();
      if (front.stranded || idle > IDLE) {
        return anySide();
      }
      now = Math.max(now, next);
      if (!step(now)) {
        if (front.trouble >= 0 || pavings++ == PAVINGS) {
          return front.trouble >= 0 ? front.trouble : anySide();
        }
        now = paveAgain(now);
        if (Double.isNaN(now)) {
          return anySide();
        }
      }
    }
    return front.trouble;
  }

  private void scheduleAll(double now) {
    agenda.clear();
    for (int t = 0; t < tiles.count; t++) {
      agenda.set(t, clock.runsOut(t, now));
    }
  }

  /**
   * How often all tiles may be laid anew where the hole at one place could not be filled: it may
   * have grown round a courtyard, when thousands of corners come into line at once.
   */
  private static final int PAVINGS = 16;

  /**
   * Lays all tiles anew a little later, when corners that stand in one point or line have parted.
   *
   * @return the time for which they were laid, or NaN if the front would not be tiled
   */
  private double paveAgain(double now) {
    for (double wait = FIRST_WAIT; wait <= LAST_WAIT; wait *= FIRST_WAIT) {
      double then = now + wait * together;
      if (Paving.again(tiles, front, then)) {
        scheduleAll(then);
        return then;
      }
    }
    return Double.NaN;
  }

  /** Waits before tiles are laid anew, in times that count as one. */
  private static final double FIRST_WAIT = 8;

  private static final double LAST_WAIT = 4096;

  /**
   * Steps at one time that may go by without a corner ending. Edges are swapped all at once, so a
   * handful is usual; tiles that keep running out in a circle would go on for ever.
   */
  private static final int IDLE = 200;

  private boolean step(double now) {
    mending.open(now);
    collect(now);
    int born = front.count;
    front.ended = 0;
    contacts.resolve();
    if (front.trouble >= 0 || !mending.rename(born) || !mending.fill(born)) {
      return false;
    }
    schedule(now);
    return true;
  }

  private void collect(double now) {
    contacts.open(now);
    if (seen.length < front.in.length) {
      seen = Arrays.copyOf(seen, front.in.length);
      walked = Arrays.copyOf(walked, front.in.length);
    }
    later.clear();
    while (agenda.firstTime() <= now + together) {
      int t = agenda.first();
      double time = agenda.firstTime();
      agenda.remove(t);
      if (isHere(t, time - now)) {
        mending.take(t);
      } else {
        later.add(t);
      }
    }
    for (int i = 0; i < later.size; i++) {
      agenda.set(later.at[i], clock.runsOut(later.at[i], now));
    }
    mending.flood();
    for (int i = 0; i < mending.takenCount(); i++) {
      int t = mending.taken(i);
      for (int e = 3 * t; e < 3 * t + 3; e++) {
        look(tiles.corner[e]);
      }
    }
  }

  /** In so short a time none of the tile's corners moves by more than a point's width. */
  private boolean isHere(int t, double wait) {
    return wait <= 0
        || (front.pace(tiles.corner[3 * t]) * wait <= reach
            && front.pace(tiles.corner[3 * t + 1]) * wait <= reach
            && front.pace(tiles.corner[3 * t + 2]) * wait <= reach);
  }

  /** A corner with the stretches on either side. */
  private void look(int v) {
    corner(v);
    corner(front.prev[v]);
    corner(front.next[v]);
    stretch(v);
    stretch(front.prev[v]);
  }

  private void corner(int v) {
    if (seen[v] != mending.stamp()) {
      seen[v] = mending.stamp();
      contacts.corner(v);
    }
  }

  private void stretch(int v) {
    if (walked[v] != mending.stamp()) {
      walked[v] = mending.stamp();
      contacts.stretch(v);
    }
  }

  private void schedule(double now) {
    for (int i = 0; i < mending.takenCount(); i++) {
      int t = mending.taken(i);
      if (!tiles.alive[t]) {
        agenda.remove(t);
      }
    }
    for (int i = 0; i < mending.changedCount(); i++) {
      int t = mending.changed(i);
      if (tiles.alive[t]) {
        agenda.set(t, clock.runsOut(t, now));
      }
    }
  }

  private int anySide() {
    for (int v = 0; v < front.count; v++) {
      if (front.alive[v]) {
        return front.out[v];
      }
    }
    return 0;
  }
}
