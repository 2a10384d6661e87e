package org.roastfield.lab.cooker;

import org.roastfield.core.cook.Instrument;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.parameter.CookParameters;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterSet;
import org.roastfield.core.shape.Shape;
import org.roastfield.core.shape.Slab;

/**
 * A probe of a logged cook whose place and bias are free. Its name in computed cooks is that of its
 * channel with "probe" before it.
 *
 * @param channel of the log
 * @param stated as the cook file has it
 * @param middle whether it is meant for the middle
 */
record VariedProbe(String channel, Probe stated, boolean middle) {

  /**
   * Nearer to the middle than this share of the half thickness, a stated depth means the middle.
   */
  private static final double NEAR = 0.02;

  /** A probe stays within this share of what its place allows. */
  private static final double INSIDE = 0.9;

  /**
   * A probe of a channel.
   *
   * @param shape stated
   */
  static VariedProbe of(String channel, Probe stated, Shape shape) {
    double half = shape.halfThickness();
    boolean middle = Math.abs(stated.distanceFromMiddle(shape)) < NEAR * half;
    return new VariedProbe(channel, stated, middle);
  }

  String name() {
    return "probe " + channel;
  }

  String offsetId() {
    return id(CookParameters.PROBE_OFFSET);
  }

  String biasId() {
    return id(CookParameters.PROBE_BIAS);
  }

  private String id(Parameter parameter) {
    return channel.equals("core") ? parameter.id() : parameter.id() + "." + channel;
  }

  /** Its own parameters in a cut of a stated shape. */
  ParameterSet parameters(Shape shape) {
    Parameter offset = middle ? CookParameters.PROBE_OFFSET : CookParameters.PROBE_DEPTH;
    Parameter bias = CookParameters.PROBE_BIAS;
    double half = shape.halfThickness();
    double deep = half - Math.abs(stated.distanceFromMiddle(shape));
    double low = middle ? offset.low() : Math.max(offset.low(), -INSIDE * deep);
    double high = Math.min(offset.high(), INSIDE * half);
    return ParameterSet.of(
        changed(offset, offsetId(), low, high), changed(bias, biasId(), bias.low(), bias.high()));
  }

  private static Parameter changed(Parameter of, String id, double low, double high) {
    double median = Math.min(of.median(), 0.5 * (low + high));
    return new Parameter(
        id, of.unit(), of.owner(), of.scale(), median, of.spread(), low, high, of.source());
  }

  /** The probe at values of the numbers in a cut of a shape; without the steps of a display. */
  Probe at(Numbers numbers, Shape shape) {
    double deeper = numbers.offset(offsetId());
    Instrument instrument = stated.instrument();
    return new Probe(name(), Double.POSITIVE_INFINITY, distance(deeper, shape), Instrument.IDEAL)
        .with(instrument.withBias(instrument.bias() + numbers.offset(biasId())).withResolution(0));
  }

  /** From the middle [m]: on the other side of a round cut is as far on this one. */
  private double distance(double deeper, Shape shape) {
    double from = middle ? deeper : placed(shape) - deeper;
    return shape instanceof Slab ? from : Math.abs(from);
  }

  private double placed(Shape shape) {
    return stated.depth() == Double.POSITIVE_INFINITY
        ? stated.offset()
        : shape.halfThickness() - stated.depth();
  }
}
