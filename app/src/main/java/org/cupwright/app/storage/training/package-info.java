/** What people learn of the hand work, and who says that they can do it: kept, never changed, only corrected. */
package org.cupwright.app.storage.training;
