/**
 * Winter weather: how cold wind makes it feel, and the danger for bare skin.
 *
 * <p>{@link org.snugsheet.engine.winter.WindChill} is the index that Canada and the United States publish together since
 * 2001; {@link org.snugsheet.engine.winter.Frostbite} puts a wind chill into the published bands of risk. Both apply to the
 * bare face of an adult. Children cool faster, and every display of these numbers must say so.
 *
 * <p>This package uses {@link org.snugsheet.engine} and {@link org.snugsheet.engine.quantity}, nothing else.
 */
package org.snugsheet.engine.winter;
