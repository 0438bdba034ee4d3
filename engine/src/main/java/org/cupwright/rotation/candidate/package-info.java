/** What the rotation may choose from: the judged spots of each green, thinned out, with what is wished for the day. */
package org.cupwright.rotation.candidate;
