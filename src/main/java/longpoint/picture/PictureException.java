package longpoint.picture;

import java.io.IOException;
import java.util.Objects;

/** A picture file that cannot be used, and why. */
public final class PictureException extends IOException {
  private static final long serialVersionUID = 1;

  /** Why a picture cannot be used. */
  public enum Reason {
    /** Neither PNG, JPEG nor PDF. */
    OTHER_KIND,
    /** More pixels, or a longer file, than any scan of a drawing. */
    TOO_LARGE,
    /** Ends early, or makes no sense. */
    DAMAGED,
    /** A PDF that wants a password. */
    LOCKED,
    /** A PDF without a page. */
    NO_PAGE,
    /** A PDF whose page is not painted within a minute. */
    ENDLESS
  }

  private final Reason reason;

  PictureException(Reason reason) {
    super(reason.name());
    this.reason = Objects.requireNonNull(reason);
  }

  PictureException(Reason reason, Throwable cause) {
    super(reason.name(), cause);
    this.reason = Objects.requireNonNull(reason);
  }

  public Reason reason() {
    return reason;
  }
}
