/**
 * Made-up logs from computed cooks: a chamber that drifts and is opened, probes that err. The same
 * seed gives the same bytes on every machine.
 *
 * <p>What is added to the computation is simpler than a fire and a probe are; a log from here tests
 * that software fits together, not that physics is right.
 */
@NullMarked
package org.roastfield.lab.synthetic;

import org.jspecify.annotations.NullMarked;
