/** Writes the bodies of the jig as STL: start with {@code StlExporter}. */
package org.slatwright.exporter.stl;
