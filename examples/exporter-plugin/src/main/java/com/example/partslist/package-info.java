/** An exporter made outside of Slatwright: a parts list in Markdown. */
package com.example.partslist;
