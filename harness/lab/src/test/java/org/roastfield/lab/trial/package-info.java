@NullMarked
package org.roastfield.lab.trial;

import org.jspecify.annotations.NullMarked;
