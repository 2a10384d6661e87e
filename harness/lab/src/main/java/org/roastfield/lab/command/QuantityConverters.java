package org.roastfield.lab.command;

import org.roastfield.lab.files.Quantities;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Options that are quantities with units, as in a cook file. */
final class QuantityConverters {

  private QuantityConverters() {}

  /** Temperature [K] of text such as "57 °C". */
  static final class Temperature implements ITypeConverter<Double> {

    Temperature() {}

    @Override
    public Double convert(String text) {
      try {
        return Quantities.temperature(text);
      } catch (IllegalArgumentException e) {
        throw new TypeConversionException(e.getMessage());
      }
    }
  }

  /** Time [s] of text such as "415 min". */
  static final class Time implements ITypeConverter<Double> {

    Time() {}

    @Override
    public Double convert(String text) {
      try {
        return Quantities.time(text);
      } catch (IllegalArgumentException e) {
        throw new TypeConversionException(e.getMessage());
      }
    }
  }

  /** Length [m] of text such as "10 mm". */
  static final class Length implements ITypeConverter<Double> {

    Length() {}

    @Override
    public Double convert(String text) {
      try {
        return Quantities.length(text);
      } catch (IllegalArgumentException e) {
        throw new TypeConversionException(e.getMessage());
      }
    }
  }

  /** Share of text such as "1.2 %". */
  static final class Share implements ITypeConverter<Double> {

    Share() {}

    @Override
    public Double convert(String text) {
      try {
        return Quantities.share(text);
      } catch (IllegalArgumentException e) {
        throw new TypeConversionException(e.getMessage());
      }
    }
  }

  /** Mass [kg] of text such as "120 g". */
  static final class Mass implements ITypeConverter<Double> {

    Mass() {}

    @Override
    public Double convert(String text) {
      try {
        return Quantities.mass(text);
      } catch (IllegalArgumentException e) {
        throw new TypeConversionException(e.getMessage());
      }
    }
  }
}
