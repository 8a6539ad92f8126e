/* Where a table is wider than the screen, keys can move it too. */
(() => {
  const watch = new ResizeObserver((entries) => {
    entries.forEach(({ target }) => {
      const wide = target.scrollWidth > target.clientWidth;
      const given = { role: "region", tabindex: "0", "aria-label": target.querySelector("caption").textContent };
      Object.entries(given).forEach(([name, value]) => {
        if (wide) {
          target.setAttribute(name, value);
        } else {
          target.removeAttribute(name);
        }
      });
    });
  });
  document.querySelectorAll(".scrolls").forEach((node) => watch.observe(node));
})();
