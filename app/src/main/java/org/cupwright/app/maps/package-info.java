/**
 * Drawings of greens, as SVG: one renderer for paper, pages and pictures; and their PNG by rasterising the same SVG.
 */
package org.cupwright.app.maps;
