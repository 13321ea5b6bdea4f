package longpoint.desktop;

/** There is no screen to open a window on. The message is one sentence for the user. */
public final class NoDisplayException extends Exception {
  private static final long serialVersionUID = 1;

  NoDisplayException(Throwable cause) {
    super(Texts.of("app.noDisplay"), cause);
  }
}
