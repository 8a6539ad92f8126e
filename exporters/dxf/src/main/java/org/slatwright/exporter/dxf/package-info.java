/**
 * Jig plates and drilled parts as ASCII DXF, real size.
 *
 * <p>{@link org.slatwright.exporter.dxf.DxfExporter} turns each pattern into a {@link
 * org.slatwright.exporter.dxf.Drawing}, which a {@link org.slatwright.exporter.dxf.DxfDocument} of
 * one version writes as tags; {@link org.slatwright.exporter.dxf.DxfTagWriter} alone knows how a
 * tag is spelt. Group codes and sections follow Autodesk's DXF Reference.
 */
package org.slatwright.exporter.dxf;
