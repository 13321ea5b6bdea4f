package longpoint.editor;

/** What is typed in the middle of a gesture: figures in plan units, or words. */
public sealed interface Entry {
  /** What a state can make use of. */
  enum Kind {
    LENGTH,
    POLAR,
    SIZE,
    ANGLE,
    WORDS
  }

  Kind kind();

  /** A length, e.g. along the direction pointed in. */
  record Length(double length) implements Entry {
    @Override
    public Kind kind() {
      return Kind.LENGTH;
    }
  }

  /**
   * A rectangle's size.
   *
   * @param width along x or along the wall
   * @param depth along y or away from the wall
   */
  record Size(double width, double depth) implements Entry {
    @Override
    public Kind kind() {
      return Kind.SIZE;
    }
  }

  /**
   * A length in a direction of its own.
   *
   * @param degrees counter-clockwise from straight right
   */
  record Polar(double length, double degrees) implements Entry {
    @Override
    public Kind kind() {
      return Kind.POLAR;
    }
  }

  /** An angle in degrees, counter-clockwise. */
  record Angle(double degrees) implements Entry {
    @Override
    public Kind kind() {
      return Kind.ANGLE;
    }
  }

  /** Words, as they are. */
  record Words(String text) implements Entry {
    @Override
    public Kind kind() {
      return Kind.WORDS;
    }
  }
}
