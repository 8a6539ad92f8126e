/**
 * The drilling jig, made to the measured stock.
 *
 * <p>Start with {@link org.slatwright.design.jig.JigMaker}. The jig is a saddle over the outer face
 * of an upright: a stack of guide plates lies on that face, two cheeks straddle the upright, and a
 * register across the cheeks rests on an edge of the rail, so that the guide stands over the dowel
 * without any measuring. The upright runs on above and below every rail but the outermost, so a
 * saddle with a fixed register would never get past it: the register is a loose key, pushed in from
 * the side when the saddle is on. {@code Saddle} has every size and the reason for it, {@code
 * SaddlePlates} turns the sizes into plates.
 */
package org.slatwright.design.jig;
