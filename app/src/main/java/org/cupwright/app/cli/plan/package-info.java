/** Commands that judge, plan, publish and explain, and write the papers. */
package org.cupwright.app.cli.plan;
