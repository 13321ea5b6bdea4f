package longpoint.packet;

/** A kind of file a packet may hold. */
public enum Output {
  PDF("application/pdf", "every sheet, to scale, in one file to print"),
  HTML("text/html; charset=utf-8", "a page for phones: open it in the browser, no network needed"),
  XLSX(
      "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
      "every list as a spreadsheet"),
  CSV("text/csv; charset=utf-8", "every list as comma-separated values"),
  TXT("text/plain; charset=utf-8", "every figure as plain text"),
  DXF("image/vnd.dxf", "plan, frame or unfolded planes in real size, for CAD programs"),
  DXF3D("image/vnd.dxf", "the house in space as 3D faces, for CAD programs"),
  SVG("image/svg+xml", "a sheet; Longpoint opens it as the plan it shows"),
  GLB("model/gltf-binary", "the house in space, glTF"),
  OBJ("model/obj", "the house in space, for modelling programs"),
  JSON("application/json", "every figure for programs"),
  PLAN("application/json", "the plan, to open in Longpoint");

  private final String type;
  private final String about;

  Output(String type, String about) {
    this.type = type;
    this.about = about;
  }

  /** Media type (IANA registry). */
  String type() {
    return type;
  }

  /** What a file of this kind is, for the mail. */
  String about() {
    return about;
  }
}
