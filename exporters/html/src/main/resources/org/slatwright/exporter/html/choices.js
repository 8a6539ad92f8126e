/* The unit, and light or dark. */
(() => {
  const root = document.documentElement;

  const unitKey = document.body.dataset.plan + "-unit";
  const units = [...document.querySelectorAll("[name=unit]")];
  const showUnit = (unit) => {
    root.dataset.unit = unit;
    units.forEach((radio) => {
      radio.checked = radio.value === unit;
    });
  };
  units.forEach((radio) => {
    radio.addEventListener("change", () => {
      showUnit(radio.value);
      memory.write(unitKey, radio.value);
    });
  });
  const remembered = memory.read(unitKey);
  showUnit(units.some((radio) => radio.value === remembered) ? remembered : root.dataset.unit);

  const themeKey = "slatwright-theme";
  const dark = document.querySelector("[data-dark]");
  const wish = matchMedia("(prefers-color-scheme: dark)");
  const isDark = () => (root.dataset.theme ? root.dataset.theme === "dark" : wish.matches);
  const showTheme = () => dark.setAttribute("aria-pressed", String(isDark()));
  dark.addEventListener("click", () => {
    root.dataset.theme = isDark() ? "light" : "dark";
    memory.write(themeKey, root.dataset.theme);
    showTheme();
  });
  wish.addEventListener("change", showTheme);
  const chosen = memory.read(themeKey);
  if (chosen === "light" || chosen === "dark") {
    root.dataset.theme = chosen;
  }
  showTheme();
})();
