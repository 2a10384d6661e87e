/** Benchmarks of the library with JMH; the command stands at the head of this module's pom. */
@NullMarked
package org.roastfield.bench;

import org.jspecify.annotations.NullMarked;
