/** What answers are as JSON: one shape for each, the same at every door. */
package org.cupwright.app.answers.json;
