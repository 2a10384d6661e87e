/** Tests of diagnoses. */
@NullMarked
package org.roastfield.lab.diagnosis;

import org.jspecify.annotations.NullMarked;
