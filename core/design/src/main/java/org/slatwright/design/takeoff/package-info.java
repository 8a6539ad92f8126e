/** The quantities of a rack: what it weighs and what building it uses up. */
package org.slatwright.design.takeoff;
