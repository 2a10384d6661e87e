package org.roastfield.lab.plan;

import java.util.List;
import org.roastfield.core.outcome.DonenessScale;
import org.roastfield.core.plan.CoreWish;
import org.roastfield.core.shape.Taper;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.Wishes;
import org.roastfield.lab.timeline.TemperatureScale;

/**
 * The wish for the final core of a cook file.
 *
 * @param wish for the core
 * @param words such as "medium, trade scale"
 */
record CoreWishes(CoreWish wish, String words) {

  /**
   * The wish of a file.
   *
   * @throws UnplannableException if there is none that names a temperature
   */
  static CoreWishes of(CookFile file) {
    if (file.notes().plan().core().isPresent()) {
      double core = file.notes().plan().core().getAsDouble();
      return new CoreWishes(CoreWish.of(core), TemperatureScale.CELSIUS.text(core));
    }
    Wishes wishes = file.notes().wishes();
    if (wishes.scale().isEmpty()) {
      throw new UnplannableException(
          "no wish for the final core: say plan: {core: 57 °C}, or wishes: {scale: trade, doneness:"
              + " medium}");
    }
    DonenessScale scale = wishes.scale().get();
    String degree = wishes.doneness().get(thickest(file));
    List<String> bands = scale.bands().stream().map(DonenessScale.Band::name).toList();
    return new CoreWishes(
        CoreWish.of(scale, bands.indexOf(degree)), degree + ", " + scale.name() + " scale");
  }

  /**
   * A taper's cook is that of its thickest station, so the wish is that of the third it lies in.
   */
  private static int thickest(CookFile file) {
    if (file.notes().wishes().doneness().size() == 1 || file.taper().isEmpty()) {
      return 0;
    }
    double most = 0;
    int index = 0;
    List<Double> across =
        file.taper().get().stations(Taper.THIRDS).stream()
            .map(s -> s.crossSection().thickness())
            .toList();
    for (int i = 0; i < across.size(); i++) {
      if (across.get(i) > most) {
        most = across.get(i);
        index = i;
      }
    }
    return index;
  }
}
