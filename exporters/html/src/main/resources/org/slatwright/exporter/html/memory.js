"use strict";

/** What this device remembers; where it may not, what this page remembers until it is closed. */
const memory = (() => {
  const here = new Map();
  return {
    read(key) {
      try {
        return localStorage.getItem(key) ?? here.get(key) ?? "";
      } catch {
        return here.get(key) ?? "";
      }
    },
    write(key, value) {
      here.set(key, value);
      try {
        localStorage.setItem(key, value);
      } catch {
        // Nothing more can be done: the tick holds until the page is closed.
      }
    },
  };
})();

document.querySelectorAll(".controls, .all-ticks, [data-enlarge]").forEach((node) => {
  node.hidden = false;
});
