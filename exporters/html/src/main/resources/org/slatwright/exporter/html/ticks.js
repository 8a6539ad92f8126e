/* Ticks, how many of them are set, and how all are cleared. */
(() => {
  const key = document.body.dataset.plan;
  const boxes = [...document.querySelectorAll("[data-tick]")];
  const clearing = document.getElementById("clearing");

  const remembered = () => {
    try {
      const list = JSON.parse(memory.read(key));
      return new Set(Array.isArray(list) ? list : []);
    } catch {
      return new Set();
    }
  };

  const said = (some) => `${some.filter((box) => box.checked).length} of ${some.length} done`;

  const showProgress = () => {
    document.querySelectorAll("[data-progress-all]").forEach((node) => {
      node.textContent = said(boxes);
    });
    document.querySelectorAll("[data-progress]").forEach((node) => {
      const own = boxes.filter((box) => node.closest("section").contains(box));
      node.hidden = own.length === 0;
      node.textContent = said(own);
    });
  };

  const show = () => {
    const done = remembered();
    boxes.forEach((box) => {
      box.checked = done.has(box.dataset.tick);
    });
    showProgress();
  };

  const keep = () => {
    const done = boxes.filter((box) => box.checked).map((box) => box.dataset.tick);
    memory.write(key, JSON.stringify(done));
    showProgress();
  };

  boxes.forEach((box) => box.addEventListener("change", keep));
  document.querySelector("[data-clear]").addEventListener("click", () => clearing.showModal());
  clearing.addEventListener("click", (event) => {
    const action = event.target.dataset.action;
    if (action === "clear") {
      boxes.forEach((box) => {
        box.checked = false;
      });
      keep();
    }
    if (action) {
      clearing.close();
    }
  });
  // Another window of the same plan.
  addEventListener("storage", (event) => {
    if (event.key === key) {
      show();
    }
  });
  show();
})();
