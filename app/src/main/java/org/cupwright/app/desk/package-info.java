/**
 * The use cases: import a course, judge a green, roll a ball, plan a day, change a setting, explain a plan. The package
 * owns the interfaces of what it needs from storage and knows nothing of SQL, commands or words.
 */
package org.cupwright.app.desk;
