/**
 * What a plugin implements: {@link org.slatwright.api.export.Exporter}, found with {@link
 * java.util.ServiceLoader}.
 */
package org.slatwright.api.export;
