package longpoint.packet;

/** A kind of file a packet may hold. */
public enum Output {
  PDF("application/pdf"),
  HTML("text/html; charset=utf-8"),
  XLSX("application/vnd.openxmlformats-officedocument.spreadsheetml.sheet"),
  CSV("text/csv; charset=utf-8"),
  DIFFERENCES("text/csv; charset=utf-8"),
  TXT("text/plain; charset=utf-8"),
  DXF("image/vnd.dxf"),
  DXF3D("image/vnd.dxf"),
  SVG("image/svg+xml"),
  GLB("model/gltf-binary"),
  OBJ("model/obj"),
  JSON("application/json"),
  PLAN("application/json");

  private final String type;

  Output(String type) {
    this.type = type;
  }

  /** Media type (IANA registry). */
  String type() {
    return type;
  }
}
