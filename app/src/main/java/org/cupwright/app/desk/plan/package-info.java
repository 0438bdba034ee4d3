/** The day's plan: made, published, withdrawn, and why a hole is where it is. */
package org.cupwright.app.desk.plan;
