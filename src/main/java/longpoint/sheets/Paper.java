package longpoint.sheets;

/** Sizes of paper, lying: longer side across. ANSI/ASME Y14.1 and ISO 216 (from memory). */
public enum Paper {
  LETTER("Letter", 279.4, 215.9),
  TABLOID("Tabloid", 431.8, 279.4),
  A4("A4", 297, 210),
  A3("A3", 420, 297);

  private final String title;
  private final double widthMm;
  private final double heightMm;

  Paper(String title, double widthMm, double heightMm) {
    this.title = title;
    this.widthMm = widthMm;
    this.heightMm = heightMm;
  }

  public String title() {
    return title;
  }

  public double widthMm() {
    return widthMm;
  }

  public double heightMm() {
    return heightMm;
  }
}
