package longpoint;

/** Starts the program. */
public final class Longpoint {
  private Longpoint() {}

  public static void main(String[] args) {
    System.out.println("Longpoint");
  }
}
