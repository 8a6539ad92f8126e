/* One drawing as large as the screen: moved and zoomed by its view box. */
(() => {
  const LARGEST = 16;
  const STEP = 1.4;
  const dialog = document.getElementById("viewer");
  const stage = dialog.querySelector(".stage");
  const heading = dialog.querySelector("h2");
  const figures = [...document.querySelectorAll("figure.sheet")];
  const touching = new Map();
  let open = -1;
  let svg = null;
  let whole = null;
  let view = null;

  const clamp = (value, least, most) => Math.min(Math.max(value, least), most);

  /** The middle of what is seen stays on the paper. */
  const show = () => {
    view.x = clamp(view.x, whole.x - view.width / 2, whole.x + whole.width - view.width / 2);
    view.y = clamp(view.y, whole.y - view.height / 2, whole.y + whole.height - view.height / 2);
    svg.setAttribute("viewBox", `${view.x} ${view.y} ${view.width} ${view.height}`);
  };

  const showAll = () => {
    view = { ...whole };
    show();
  };

  const onPaper = (x, y) => new DOMPoint(x, y).matrixTransform(svg.getScreenCTM().inverse());

  const zoom = (wanted, x, y) => {
    const now = whole.width / view.width;
    const factor = clamp(now * wanted, 1, LARGEST) / now;
    const still = onPaper(x, y);
    view.x = still.x - (still.x - view.x) / factor;
    view.y = still.y - (still.y - view.y) / factor;
    view.width /= factor;
    view.height /= factor;
    show();
  };

  const zoomMiddle = (factor) => {
    const box = stage.getBoundingClientRect();
    zoom(factor, box.x + box.width / 2, box.y + box.height / 2);
  };

  const move = (right, down) => {
    const pixel = 1 / svg.getScreenCTM().a;
    view.x -= right * pixel;
    view.y -= down * pixel;
    show();
  };

  const putBack = () => {
    if (svg) {
      showAll();
      figures[open].querySelector(".paper").append(svg);
      svg = null;
    }
  };

  const take = (index) => {
    putBack();
    open = (index + figures.length) % figures.length;
    svg = figures[open].querySelector("svg");
    const { x, y, width, height } = svg.viewBox.baseVal;
    whole = { x, y, width, height };
    heading.textContent = figures[open].dataset.title;
    stage.append(svg);
    showAll();
  };

  const actions = {
    previous: () => take(open - 1),
    next: () => take(open + 1),
    out: () => zoomMiddle(1 / STEP),
    in: () => zoomMiddle(STEP),
    all: showAll,
    close: () => dialog.close(),
  };

  const keys = {
    "+": actions.in,
    "=": actions.in,
    "-": actions.out,
    0: actions.all,
    ArrowLeft: () => move(60, 0),
    ArrowRight: () => move(-60, 0),
    ArrowUp: () => move(0, 60),
    ArrowDown: () => move(0, -60),
    PageUp: actions.previous,
    PageDown: actions.next,
  };

  figures.forEach((figure, index) => {
    const enlarge = () => {
      dialog.showModal();
      take(index);
      stage.focus();
    };
    figure.querySelector("[data-enlarge]").addEventListener("click", enlarge);
    figure.querySelector(".paper").addEventListener("click", enlarge);
  });

  dialog.addEventListener("click", (event) => actions[event.target.dataset.action]?.());
  dialog.addEventListener("close", putBack);
  stage.addEventListener("keydown", (event) => {
    const action = event.ctrlKey || event.metaKey || event.altKey ? null : keys[event.key];
    if (action) {
      event.preventDefault();
      action();
    }
  });
  stage.addEventListener(
    "wheel",
    (event) => {
      event.preventDefault();
      zoom(Math.exp(-event.deltaY / 600), event.clientX, event.clientY);
    },
    { passive: false },
  );

  /** Where the fingers are together, and how far apart. */
  const grip = () => {
    const places = [...touching.values()];
    const middle = (way) => places.reduce((sum, place) => sum + place[way], 0) / places.length;
    const [x, y] = [middle("x"), middle("y")];
    const spread = places.reduce((sum, place) => sum + Math.hypot(place.x - x, place.y - y), 0);
    return { x, y, spread };
  };

  stage.addEventListener("pointerdown", (event) => {
    stage.setPointerCapture(event.pointerId);
    touching.set(event.pointerId, { x: event.clientX, y: event.clientY });
  });
  stage.addEventListener("pointermove", (event) => {
    if (touching.has(event.pointerId)) {
      const before = grip();
      touching.set(event.pointerId, { x: event.clientX, y: event.clientY });
      const after = grip();
      move(after.x - before.x, after.y - before.y);
      if (before.spread > 0) {
        zoom(after.spread / before.spread, after.x, after.y);
      }
    }
  });
  ["pointerup", "pointercancel"].forEach((end) => {
    stage.addEventListener(end, (event) => touching.delete(event.pointerId));
  });
})();
