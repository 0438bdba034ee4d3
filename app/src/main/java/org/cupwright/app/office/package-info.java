/**
 * Pages for those who plan: by the use cases of app.desk and the words of app.answers, as the commands. A page is a
 * controller, which asks and says where to go on; a view, which has the words in the order of the page; and a template,
 * which has neither words nor decisions.
 */
package org.cupwright.app.office;
