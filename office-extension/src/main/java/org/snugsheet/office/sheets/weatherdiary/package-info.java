/**
 * The weather diary: a month of school days, for the standard on weather patterns of kindergarten (NGSS K-ESS2-1, from memory).
 * {@link org.snugsheet.office.sheets.weatherdiary.WeatherDiary} puts its pages together.
 */
@NullMarked
package org.snugsheet.office.sheets.weatherdiary;

import org.jspecify.annotations.NullMarked;
