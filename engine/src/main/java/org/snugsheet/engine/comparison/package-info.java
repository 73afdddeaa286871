/** Estimates set against each other. */
package org.snugsheet.engine.comparison;
