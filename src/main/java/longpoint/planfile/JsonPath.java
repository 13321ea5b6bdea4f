package longpoint.planfile;

/**
 * Where a value stands in a file.
 *
 * @param parent null at the top
 * @param key of an object's value; null in an array
 * @param index in an array
 */
record JsonPath(JsonPath parent, String key, int index) {
  static final JsonPath TOP = new JsonPath(null, null, 0);

  JsonPath key(String name) {
    return new JsonPath(this, name, 0);
  }

  JsonPath index(int i) {
    return new JsonPath(this, null, i);
  }

  /** As people read it: {@code parts[1].edges[2].slope}. */
  String words() {
    if (parent == null) {
      return "";
    }
    String before = parent.words();
    if (key == null) {
      return before + "[" + index + "]";
    }
    return before.isEmpty() ? shown() : before + "." + shown();
  }

  /** As programs read it (RFC 6901): {@code /parts/1/edges/2/slope}. */
  String pointer() {
    if (parent == null) {
      return "";
    }
    String step = key == null ? Integer.toString(index) : key.replace("~", "~0").replace("/", "~1");
    return parent.pointer() + "/" + step;
  }

  private String shown() {
    return key.length() <= 60 ? key : key.substring(0, 60) + "…";
  }
}
