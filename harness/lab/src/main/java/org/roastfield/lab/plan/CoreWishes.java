package org.roastfield.lab.plan;

import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.roastfield.core.outcome.DonenessScale;
import org.roastfield.core.plan.CoreWish;
import org.roastfield.core.shape.Taper;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.Wishes;

/**
 * The wish for the final core of a cook file.
 *
 * @param wish for the core
 * @param words such as "medium, trade scale"; empty for a temperature
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
      return new CoreWishes(CoreWish.near(core), "");
    }
    Wishes wishes = file.notes().wishes();
    if (wishes.scale().isEmpty()) {
      throw new UnplannableException(
          "no wish for the final core: say plan: {core: 57 °C}, or wishes: {scale: trade, doneness:"
              + " medium}");
    }
    int third =
        wishes.doneness().size() == 1 || file.taper().isEmpty() ? 0 : thickest(file.taper().get());
    return named(wishes, third);
  }

  private static CoreWishes named(Wishes wishes, int third) {
    DonenessScale scale = wishes.scale().orElseThrow();
    String degree = wishes.doneness().get(third);
    List<String> bands = scale.bands().stream().map(DonenessScale.Band::name).toList();
    return new CoreWishes(
        CoreWish.of(scale, bands.indexOf(degree)), degree + ", " + scale.name() + " scale");
  }

  /** The wishes of the thirds of a taper, alike where the file has one for all. */
  static List<CoreWishes> ofThirds(CookFile file) {
    Wishes wishes = file.notes().wishes();
    boolean each = file.notes().plan().core().isEmpty() && wishes.doneness().size() > 1;
    CoreWishes all = of(file);
    return IntStream.range(0, Taper.THIRDS)
        .mapToObj(third -> each ? named(wishes, third) : all)
        .toList();
  }

  /** Third in which the thickest station of a taper lies, whose cook its file's cook is. */
  static int thickest(Taper taper) {
    List<Double> across =
        taper.stations(Taper.THIRDS).stream().map(s -> s.crossSection().thickness()).toList();
    return across.indexOf(Collections.max(across));
  }
}
