package longpoint.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Field;
import java.util.ArrayList;
import java.util.List;
import longpoint.drawing.Layer;
import longpoint.plan.Plan;
import longpoint.units.LengthUnit;
import longpoint.wording.Language;
import org.junit.jupiter.api.Test;

/** A layer says the same in a legend as in the code that draws it, and has a French name. */
class LayerWordsTest {
  @Test
  void everyLayerIsWorded() throws Exception {
    List<Layer> layers = new ArrayList<>();
    for (Class<?> holder : List.of(Layers.class, FrameLayers.class)) {
      for (Field field : holder.getFields()) {
        if (field.getType() == Layer.class) {
          layers.add((Layer) field.get(null));
        }
      }
    }
    assertThat(layers).hasSizeGreaterThan(40);
    Words english = Words.of(Plan.empty(LengthUnit.INCH));
    Words french = Words.of(Plan.empty(LengthUnit.INCH).spoken(Language.FRENCH));
    for (Layer layer : layers) {
      assertThat(english.layer(layer)).isEqualTo(layer.title());
      assertThat(french.layer(layer)).isNotBlank().isNotEqualTo(layer.title());
    }
  }
}
