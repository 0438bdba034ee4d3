/** Who learnt what, who is signed off for what, and what is due. */
package org.cupwright.app.office.training;
