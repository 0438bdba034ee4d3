// Corners are drawn on the map of a green. They stand in a field, a line each, which may be typed into as well.
"use strict";

(function () {
  const CORNER = 6; // pixels that a corner is drawn large: our choice
  const GRASP = 14; // pixels about it in which it is meant: our choice
  const CLICK = 5; // pixels that a finger may slip in a click: our choice
  const MANY = 30; // corners of an edge whose neighbours follow a corner that is moved: our choice
  const FOLLOW = 4; // paces about it in which they do: our choice
  const SVG = "http://www.w3.org/2000/svg";

  function start(map, field) {
    const picture = map.querySelector(".picture svg");
    const marks = map.querySelector(".marks svg");
    const grid = { x: Number(map.dataset.zeroX), y: Number(map.dataset.zeroY), pace: Number(map.dataset.pace) };
    const now = document.getElementById("drawn-now");
    const paces = new Intl.NumberFormat(document.documentElement.lang, { maximumFractionDigits: 1 });
    let ring = read();
    let between = ring.length > 2; // corners of what is there: another one comes between its neighbours
    let picked = -1;
    let held = -1;
    let before = ring; // the corners as they were when one was taken hold of

    const layer = document.createElementNS(SVG, "g");
    layer.setAttribute("class", "drawing");
    marks.querySelectorAll(".ring").forEach((old) => old.remove());
    marks.append(layer);

    function read() {
      return field.value.split("\n").map((line) => line.trim().replaceAll(/(\d),(\d)/g, "$1.$2").split(/[,;]?\s+|;\s*/))
        .filter((parts) => parts.length === 2)
        .map(([on, side]) => ({
          on: Number(on),
          right: /^l/i.test(side) ? -Number(side.slice(1)) : Number(side.replace(/^r/i, "")),
        }))
        .filter((corner) => Number.isFinite(corner.on) && Number.isFinite(corner.right));
    }

    function write() {
      field.value = ring.map((corner) =>
        `${corner.on.toFixed(2)} ${corner.right < 0 ? "L" : "R"}${Math.abs(corner.right).toFixed(2)}`).join("\n");
      show();
    }

    function place(corner) {
      return { x: grid.x + corner.right * grid.pace, y: grid.y - corner.on * grid.pace };
    }

    function corner(at) {
      return { on: (grid.y - at.y) / grid.pace, right: (at.x - grid.x) / grid.pace };
    }

    /** Drawing units of a pixel as near as the map is seen now. */
    function pixel() {
      return 1 / picture.getScreenCTM().a;
    }

    function near(at) {
      const gaps = ring.map(place).map((one) => Math.hypot(one.x - at.x, one.y - at.y));
      const least = Math.min(...gaps);
      return least <= GRASP * pixel() ? gaps.indexOf(least) : -1;
    }

    /** Before which corner one at a place belongs, so that the edge grows least. */
    function gap(at) {
      const all = ring.map(place);
      const longer = all.map((to, i) => {
        const from = all[(i + all.length - 1) % all.length];
        return Math.hypot(to.x - at.x, to.y - at.y) + Math.hypot(from.x - at.x, from.y - at.y)
          - Math.hypot(to.x - from.x, to.y - from.y);
      });
      return longer.indexOf(Math.min(...longer));
    }

    function show() {
      layer.replaceChildren();
      const shape = document.createElementNS(SVG, "polygon");
      shape.setAttribute("class", "corners");
      shape.setAttribute("points", ring.map(place).map((at) => `${at.x.toFixed(2)},${at.y.toFixed(2)}`).join(" "));
      layer.append(shape);
      ring.map(place).forEach((at, i) => {
        const dot = document.createElementNS(SVG, "circle");
        dot.setAttribute("class", i === picked ? "corner picked" : "corner");
        dot.setAttribute("cx", at.x);
        dot.setAttribute("cy", at.y);
        dot.setAttribute("r", (ring.length > MANY ? CORNER / 2 : CORNER) * pixel());
        layer.append(dot);
      });
      tell();
    }

    function tell() {
      const size = (way) => paces.format(Math.max(...ring.map(way)) - Math.min(...ring.map(way)));
      now.textContent = !ring.length ? "" : now.dataset.says.replace("%n", ring.length)
        .replace("%l", size((one) => one.on)).replace("%w", size((one) => one.right));
      document.querySelectorAll("[data-draw]").forEach((one) => { one.disabled = !ring.length; });
    }

    /** A corner at another place; on an edge of many corners those beside it go along, the nearer the farther. */
    function moved(index, to) {
      const from = before[index];
      const step = { on: to.on - from.on, right: to.right - from.right };
      ring = before.map((one, i) => {
        const away = Math.hypot(one.on - from.on, one.right - from.right);
        const follows = before.length > MANY && away < FOLLOW ? Math.cos((Math.PI * away) / (2 * FOLLOW)) ** 2 : 0;
        const share = i === index ? 1 : follows;
        return { on: one.on + share * step.on, right: one.right + share * step.right };
      });
    }

    map.addEventListener("meant", (event) => {
      event.preventDefault();
      const at = event.detail;
      const there = near(at);
      if (there >= 0) {
        picked = there === picked ? -1 : there;
        show();
        return;
      }
      if (picked >= 0) {
        before = ring;
        moved(picked, corner(at));
        picked = -1;
      } else if (between && ring.length > 2) {
        ring.splice(gap(at), 0, corner(at));
      } else {
        ring.push(corner(at));
      }
      write();
    });

    function under(event) {
      return new DOMPoint(event.clientX, event.clientY).matrixTransform(picture.getScreenCTM().inverse());
    }

    let slipped = 0;
    let from = null;

    map.addEventListener("pointerdown", (event) => {
      held = event.button === 0 ? near(under(event)) : -1;
      if (held >= 0) {
        event.stopPropagation();
        map.setPointerCapture(event.pointerId);
        before = ring;
        slipped = 0;
        from = event;
      }
    }, { capture: true });
    map.addEventListener("pointermove", (event) => {
      if (held >= 0) {
        event.stopPropagation();
        slipped = Math.max(slipped, Math.hypot(event.clientX - from.clientX, event.clientY - from.clientY));
        if (slipped > CLICK) {
          moved(held, corner(under(event)));
          write();
        }
      }
    }, { capture: true });
    map.addEventListener("pointerup", (event) => {
      if (held >= 0) {
        event.stopPropagation();
        picked = slipped > CLICK || picked === held ? -1 : held;
        held = -1;
        show();
      }
    }, { capture: true });
    map.addEventListener("pointercancel", () => { held = -1; });

    function back() {
      ring.splice(picked >= 0 ? picked : ring.length - 1, 1);
      picked = -1;
      write();
    }

    map.addEventListener("keydown", (event) => {
      if (event.key === "Backspace" || event.key === "Delete") {
        event.preventDefault();
        back();
      }
    });
    document.addEventListener("click", (event) => {
      const button = event.target.closest("[data-draw]");
      if (button && button.dataset.draw === "back") {
        back();
      } else if (button) {
        ring = [];
        between = false;
        picked = -1;
        write();
      }
    });
    field.addEventListener("input", () => {
      ring = read();
      picked = -1;
      show();
    });
    new MutationObserver(show).observe(picture, { attributes: true, attributeFilter: ["viewBox"] });
    window.addEventListener("resize", show);
    show();
  }

  document.addEventListener("DOMContentLoaded", () => {
    const map = document.getElementById("map");
    const field = document.getElementById("corners");
    if (map && field) {
      start(map, field);
    }
  });
})();
