/**
 * Made-up cooks: logs of computed cooks in a chamber that drifts, sags and is opened, by probes
 * that err, and the truth of each. The same seed gives the same bytes on every machine.
 *
 * <p>{@link org.roastfield.lab.synthetic.SyntheticCook} is a whole cook from priors, on a {@link
 * org.roastfield.lab.synthetic.SyntheticCooker}, whose truth may be another model than the fitted
 * one; {@link org.roastfield.lab.synthetic.SyntheticLog} the first stage of any cook file.
 *
 * <p>What is added to the computation is simpler than a fire and a probe are; a log from here tests
 * that software fits together and that a calibration finds what is true, not that physics is right.
 */
@NullMarked
package org.roastfield.lab.synthetic;

import org.jspecify.annotations.NullMarked;
