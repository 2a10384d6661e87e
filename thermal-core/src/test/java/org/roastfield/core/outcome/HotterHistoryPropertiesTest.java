package org.roastfield.core.outcome;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.roastfield.core.material.WaterHolding;
import org.roastfield.core.units.Temperatures;

/** A history that is nowhere colder is no less done, and no table is met sooner than printed. */
class HotterHistoryPropertiesTest {

  private static final List<FirstOrder> CHANGES =
      List.of(
          FirstOrder.MYOGLOBIN,
          FirstOrder.MYOGLOBIN_OF_LAMB,
          FirstOrder.ACTIN,
          FirstOrder.COLLAGEN);

  private static TemperatureHistory history(List<Double> celsius, List<Double> rise) {
    double[] times = new double[celsius.size()];
    double[] temperatures = new double[celsius.size()];
    for (int i = 0; i < times.length; i++) {
      times[i] = 300.0 * i;
      temperatures[i] = Temperatures.celsius(celsius.get(i) + rise.get(i));
    }
    return TemperatureHistory.through(times, temperatures);
  }

  @Property(tries = 500)
  void pointwiseHotter_isNoLessDone(
      @ForAll @Size(8) List<@DoubleRange(min = 0, max = 120) Double> celsius,
      @ForAll @Size(8) List<@DoubleRange(min = 0, max = 30) Double> rise) {
    TemperatureHistory cold = history(celsius, List.of(0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0));
    TemperatureHistory hot = history(celsius, rise);
    assertTrue(hot.highest() >= cold.highest());
    for (double duration : new double[] {0, 17, 180, 2100}) {
      assertTrue(hot.heldFor(duration) >= cold.heldFor(duration) - 2e-9);
    }
    for (FirstOrder change : CHANGES) {
      // The sums differ from the integrals by the error of three points a kelvin.
      assertTrue(change.changed(hot) >= change.changed(cold) - 1e-9);
    }
    for (HoldTable table : List.of(HoldTable.LOG_6_5, HoldTable.LOG_7)) {
      double lethality = table.lethality(cold);
      assertTrue(table.lethality(hot) >= lethality * (1 - 1e-9) - 1e-12);
      assertTrue(
          table.isMetBy(hot)
              || !table.isMetBy(cold)
              || table.lethality(hot) > table.logs() * (1 - 1e-9));
    }
    WaterHolding beef = WaterHolding.BEEF;
    assertTrue(beef.pressedOut(hot.highest()) >= beef.pressedOut(cold.highest()));
    assertTrue(Tenderness.melted(hot.highest()) >= Tenderness.melted(cold.highest()));
    assertTrue(
        Browning.of(hot, OptionalDouble.empty()).middle()
            >= Browning.of(cold, OptionalDouble.empty()).middle() - 1e-9);
  }

  /** Whatever the temperature, the row at or below it asks for its printed time. */
  @Property(tries = 500)
  void holds_shorterThanTheirRow_meetNothing(
      @ForAll @DoubleRange(min = 50, max = 69.99) double celsius,
      @ForAll @DoubleRange(min = 0.01, max = 0.99) double share) {
    double kelvin = Temperatures.celsius(celsius);
    for (HoldTable table : List.of(HoldTable.LOG_6_5, HoldTable.LOG_7)) {
      int row = table.rows() - 1;
      while (row > 0 && table.temperature(row) > kelvin) {
        row--;
      }
      double seconds = share * table.seconds(row);
      assertFalse(
          table.isMetBy(
              TemperatureHistory.through(
                  new double[] {0, seconds}, new double[] {kelvin, kelvin})));
    }
  }
}
