/** Coming in. */
package org.cupwright.app.office.signin;
