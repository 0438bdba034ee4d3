package org.cupwright.app.office.visit;

import java.time.Clock;
import java.util.function.Supplier;
import org.cupwright.app.storage.DataFolder;

/**
 * What all pages share.
 *
 * @param folders opens the data folder for one request
 * @param clock for today and for when something was recorded
 * @param version of the program, kept with the plans it makes
 * @param demo whether it is open to whoever sits at this machine, on the invented course
 */
public record OfficeHouse(Supplier<DataFolder> folders, Clock clock, String version, boolean demo) {}
