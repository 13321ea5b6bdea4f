package longpoint.desktop.file;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import longpoint.desktop.Texts;
import longpoint.desktop.paper.PaperTitle;
import longpoint.packet.Output;
import longpoint.packet.Request;
import longpoint.packet.Request.Bundle;
import longpoint.sheets.Paper;
import net.miginfocom.swing.MigLayout;

/** Boxes for what a packet shall hold, beside the folder it goes to. */
final class PacketForm extends JPanel {
  private static final long serialVersionUID = 1;

  /** Kinds of file that go together, as people think of them. */
  private enum Kind {
    PRINT(Output.PDF),
    PHONE(Output.HTML),
    LISTS(Output.XLSX, Output.CSV, Output.DIFFERENCES, Output.TXT),
    CAD(Output.DXF),
    SHEETS(Output.SVG),
    HOUSE(Output.GLB, Output.OBJ, Output.DXF3D),
    DATA(Output.PLAN, Output.JSON);

    private final Set<Output> outputs;

    Kind(Output... outputs) {
      this.outputs = EnumSet.copyOf(Arrays.asList(outputs));
    }
  }

  private final Map<Kind, JCheckBox> kinds = new EnumMap<>(Kind.class);
  private final JCheckBox zip;
  private final JCheckBox mail;
  private final JComboBox<Paper> paper = new JComboBox<>(Paper.values());

  PacketForm(Request first) {
    super(new MigLayout("insets 0 14 0 0, wrap 1, gapy 4", "[]"));
    add(new JLabel(Texts.of("packet.holds")));
    for (Kind kind : Kind.values()) {
      boolean on = first.outputs().containsAll(kind.outputs);
      kinds.put(kind, box("packet." + kind.name().toLowerCase(java.util.Locale.ROOT), on));
    }
    JLabel label = new JLabel(Texts.of("packet.paper"));
    label.setLabelFor(paper);
    add(label, "gaptop 8, split 2");
    paper.setName("packet.paper");
    paper.setRenderer(PaperTitle.renderer());
    paper.setSelectedItem(first.paper());
    add(paper);
    zip = box("packet.zip", first.bundles().contains(Bundle.ZIP));
    mail = box("packet.mail", first.bundles().contains(Bundle.MAIL));
  }

  private JCheckBox box(String key, boolean on) {
    JCheckBox box = new JCheckBox(Texts.of(key), on);
    box.setName(key);
    add(box);
    return box;
  }

  /** What was chosen; nothing chosen means the sheets to print. */
  Request request() {
    Set<Output> outputs = EnumSet.noneOf(Output.class);
    kinds.forEach(
        (kind, box) -> {
          if (box.isSelected()) {
            outputs.addAll(kind.outputs);
          }
        });
    if (outputs.isEmpty()) {
      outputs.add(Output.PDF);
    }
    Set<Bundle> bundles = EnumSet.noneOf(Bundle.class);
    if (zip.isSelected()) {
      bundles.add(Bundle.ZIP);
    }
    if (mail.isSelected()) {
      bundles.add(Bundle.MAIL);
    }
    return new Request((Paper) paper.getSelectedItem(), outputs, bundles);
  }
}
