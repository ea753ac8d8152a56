package longbough.model.state;

import java.util.Arrays;

/**
 * What is missing of round sections on a polar grid: by sector the spans without sound wood, from
 * inside out, and where a sector lies open to the air. Spans that overlap become one; where more
 * lie apart than a sector has room for, the nearest two are joined, the wood between them given up.
 * All radii m from the pith.
 */
public final class SectorHoles {
  /** Most spans of one sector that are kept apart. */
  public static final int SPANS = 3;

  /** Number of spans by sector. */
  public final byte[] spans;

  /** Where spans begin and end: SPANS places a sector; without length until there is one. */
  public double[] innerM = {};

  public double[] outerM = {};

  /** Whether a sector lies open to the air. */
  public final boolean[] open;

  /** Radius beyond which no wood stands in an open sector; as {@link #innerM}. */
  public double[] openFromM = {};

  public SectorHoles(int sectors) {
    spans = new byte[sectors];
    open = new boolean[sectors];
  }

  // Most trees start sound, and trees are made by the thousand.
  private void makeRoom() {
    if (innerM.length == 0) {
      innerM = new double[spans.length * SPANS];
      outerM = new double[spans.length * SPANS];
      openFromM = new double[spans.length];
    }
  }

  public boolean any(int sector) {
    return spans[sector] > 0;
  }

  /** Where the innermost span begins; 0 where there is none. */
  public double innermostM(int sector) {
    return spans[sector] == 0 ? 0 : innerM[sector * SPANS];
  }

  /** Where the outermost span ends; 0 where there is none. */
  public double outermostM(int sector) {
    return spans[sector] == 0 ? 0 : outerM[sector * SPANS + spans[sector] - 1];
  }

  /** Wood that a sector has left between pith and surface, m. */
  public double soundM(int sector, double surfaceM) {
    double end = open[sector] ? Math.min(surfaceM, openFromM[sector]) : surfaceM;
    double sound = end;
    for (int i = sector * SPANS; i < sector * SPANS + spans[sector]; i++) {
      sound -= Math.max(0, Math.min(end, outerM[i]) - innerM[i]);
    }
    return Math.max(0, sound);
  }

  /** Closes sectors; their spans stay. */
  public void close(int from, int sectors) {
    Arrays.fill(open, from, from + sectors, false);
  }

  /** Makes sectors sound and closed. */
  public void clear(int from, int sectors) {
    Arrays.fill(spans, from, from + sectors, (byte) 0);
    Arrays.fill(open, from, from + sectors, false);
    if (innerM.length > 0) {
      Arrays.fill(innerM, from * SPANS, (from + sectors) * SPANS, 0);
      Arrays.fill(outerM, from * SPANS, (from + sectors) * SPANS, 0);
      Arrays.fill(openFromM, from, from + sectors, 0);
    }
  }

  /** Opens a sector from a radius outwards, or from further in where it was open already. */
  public void open(int sector, double fromM) {
    makeRoom();
    openFromM[sector] = open[sector] ? Math.min(openFromM[sector], fromM) : fromM;
    open[sector] = true;
  }

  /** Takes a span out of a sector; returns whether that changed anything. */
  public boolean add(int sector, double inner, double outer) {
    if (!(outer > inner)) {
      return false;
    }
    makeRoom();
    int base = sector * SPANS;
    int end = base + spans[sector];
    // Most are drawn again as they were.
    if (end == base + 1 && inner >= innerM[base] && outer <= outerM[base]) {
      return false;
    }
    int from = base;
    while (from < end && outerM[from] < inner) {
      from++;
    }
    int to = from;
    double low = inner;
    double high = outer;
    while (to < end && innerM[to] <= outer) {
      low = Math.min(low, innerM[to]);
      high = Math.max(high, outerM[to]);
      to++;
    }
    if (to == from) {
      insert(sector, from, inner, outer);
      return true;
    }
    if (to == from + 1 && low == innerM[from] && high == outerM[from]) {
      return false;
    }
    innerM[from] = low;
    outerM[from] = high;
    remove(sector, from + 1, to);
    return true;
  }

  private void insert(int sector, int at, double inner, double outer) {
    int base = sector * SPANS;
    int end = base + spans[sector];
    if (end < base + SPANS) {
      System.arraycopy(innerM, at, innerM, at + 1, end - at);
      System.arraycopy(outerM, at, outerM, at + 1, end - at);
      innerM[at] = inner;
      outerM[at] = outer;
      spans[sector]++;
    } else if (at == end || at > base && inner - outerM[at - 1] < innerM[at] - outer) {
      outerM[at - 1] = outer;
    } else {
      innerM[at] = inner;
    }
  }

  private void remove(int sector, int from, int to) {
    int end = sector * SPANS + spans[sector];
    System.arraycopy(innerM, to, innerM, from, end - to);
    System.arraycopy(outerM, to, outerM, from, end - to);
    Arrays.fill(innerM, end - (to - from), end, 0);
    Arrays.fill(outerM, end - (to - from), end, 0);
    spans[sector] -= (byte) (to - from);
  }

  void makeRoomLike(SectorHoles other) {
    if (other.innerM.length > 0) {
      makeRoom();
    }
  }

  void copyFrom(SectorHoles other, int from, int sectors) {
    if (other.innerM.length == 0) {
      clear(from, sectors);
      return;
    }
    System.arraycopy(other.spans, from, spans, from, sectors);
    System.arraycopy(other.innerM, from * SPANS, innerM, from * SPANS, sectors * SPANS);
    System.arraycopy(other.outerM, from * SPANS, outerM, from * SPANS, sectors * SPANS);
    System.arraycopy(other.open, from, open, from, sectors);
    System.arraycopy(other.openFromM, from, openFromM, from, sectors);
  }
}
