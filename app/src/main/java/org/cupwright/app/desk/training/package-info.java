/** What people learn of the hand work, who signs them off, and who may cut what. */
package org.cupwright.app.desk.training;
