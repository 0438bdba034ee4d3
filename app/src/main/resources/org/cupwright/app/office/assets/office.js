// Pages work without this file; with it they answer without being laid anew.
"use strict";

/** The map of a green: seen nearer and moved, asked by a click or by a cross that the arrow keys move. */
(function () {
  const NEAREST = 12; // times as near as the whole: our choice
  const ASK_AFTER = 350; // ms after the last key: our choice
  const CLICK = 5; // pixels that a finger may slip in a click: our choice
  const SVG = "http://www.w3.org/2000/svg";

  function start(map) {
    const picture = map.querySelector(".picture svg");
    const marks = map.querySelector(".marks");
    const ask = document.getElementById("ask");
    const whole = picture.viewBox.baseVal;
    const all = { x: whole.x, y: whole.y, w: whole.width, h: whole.height };
    let view = { ...all };
    let cross = null;
    let waiting = 0;
    const fingers = new Map();
    let slipped = 0;

    function show() {
      const box = [view.x, view.y, view.w, view.h].join(" ");
      map.querySelectorAll("svg").forEach((svg) => svg.setAttribute("viewBox", box));
      map.classList.toggle("near", view.w < all.w);
    }

    /** The place of the drawing under a point of the screen. */
    function place(event) {
      return new DOMPoint(event.clientX, event.clientY).matrixTransform(picture.getScreenCTM().inverse());
    }

    function within(value, size, least, greatest) {
      return Math.min(Math.max(value, least), Math.max(least, least + greatest - size));
    }

    function look(x, y, w) {
      const width = Math.min(all.w, Math.max(all.w / NEAREST, w));
      const height = (width * all.h) / all.w;
      view = { x: within(x, width, all.x, all.w), y: within(y, height, all.y, all.h), w: width, h: height };
      show();
    }

    /** So many times as near, the place that is meant staying where it is. */
    function near(times, at) {
      const width = Math.min(all.w, Math.max(all.w / NEAREST, view.w / times));
      const share = width / view.w;
      look(at.x - (at.x - view.x) * share, at.y - (at.y - view.y) * share, width);
    }

    function middle() {
      return cross || { x: view.x + view.w / 2, y: view.y + view.h / 2 };
    }

    function sendAsk(at) {
      if (!ask) {
        return;
      }
      ask.elements.x.value = at.x.toFixed(2);
      ask.elements.y.value = at.y.toFixed(2);
      ask.requestSubmit();
    }

    /** A place that was clicked: a corner on pages where one draws, else asked about, or a corner of closed ground. */
    function meant(at) {
      if (!map.dispatchEvent(new CustomEvent("meant", { detail: at, cancelable: true }))) {
        return;
      }
      if (corners) {
        corners.push(at);
        drawCorners();
        return;
      }
      cross = at;
      clearTimeout(waiting);
      sendAsk(at);
    }

    function drawCross() {
      const svg = marks.querySelector("svg");
      let path = svg.querySelector(".cross");
      if (!cross) {
        return;
      }
      if (!path) {
        path = document.createElementNS(SVG, "path");
        path.setAttribute("class", "cross");
        svg.append(path);
      }
      path.setAttribute("d", `M${cross.x - 14} ${cross.y}h28M${cross.x} ${cross.y - 14}v28`);
    }

    function move(right, down) {
      const step = Number(map.dataset.step);
      cross = cross || { x: Number(map.dataset.x), y: Number(map.dataset.y) };
      cross = { x: within(cross.x + right * step, 0, all.x, all.w), y: within(cross.y + down * step, 0, all.y, all.h) };
      const out = cross.x < view.x || cross.y < view.y || cross.x > view.x + view.w || cross.y > view.y + view.h;
      if (out) {
        look(cross.x - view.w / 2, cross.y - view.h / 2, view.w);
      }
      drawCross();
      clearTimeout(waiting);
      if (!corners) {
        waiting = setTimeout(() => sendAsk(cross), ASK_AFTER);
      }
    }

    /** Corners of ground that is drawn; null while nothing is. */
    let corners = null;

    function drawCorners() {
      const svg = marks.querySelector("svg");
      let shape = svg.querySelector(".corners");
      if (!shape) {
        shape = document.createElementNS(SVG, "polygon");
        shape.setAttribute("class", "corners");
        svg.append(shape);
      }
      const written = (corners || []).map((at) => `${at.x.toFixed(2)},${at.y.toFixed(2)}`).join(" ");
      shape.setAttribute("points", written);
      const form = document.querySelector("[name=corners]").form;
      form.elements.corners.value = written;
      form.elements.within.disabled = corners !== null;
      form.querySelector("[data-corners=draw]").setAttribute("aria-pressed", corners !== null);
      form.querySelector("[data-corners=back]").disabled = !corners || !corners.length;
    }

    document.addEventListener("click", (event) => {
      const button = event.target.closest("[data-corners]");
      if (!button) {
        return;
      }
      if (button.dataset.corners === "draw") {
        corners = corners ? null : [];
      } else {
        corners.pop();
      }
      drawCorners();
    });

    const ways = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };
    map.addEventListener("keydown", (event) => {
      const way = ways[event.key];
      if (event.ctrlKey || event.altKey || event.metaKey) {
        return;
      }
      if (way && event.shiftKey) {
        look(view.x + (way[0] * view.w) / 8, view.y + (way[1] * view.h) / 8, view.w);
      } else if (way) {
        move(way[0], way[1]);
      } else if (event.key === "+" || event.key === "=") {
        near(1.4, middle());
      } else if (event.key === "-") {
        near(1 / 1.4, middle());
      } else if (event.key === "Enter" && event.target === map) {
        meant(middle());
      } else if (event.key === "0") {
        look(all.x, all.y, all.w);
      } else {
        return;
      }
      event.preventDefault();
    });

    document.querySelectorAll("[data-zoom]").forEach((button) =>
      button.addEventListener("click", () => {
        const times = { in: 1.6, out: 1 / 1.6 }[button.dataset.zoom];
        times ? near(times, middle()) : look(all.x, all.y, all.w);
      }));

    map.addEventListener("wheel", (event) => {
      if (event.deltaY > 0 && view.w >= all.w) {
        return; // nothing is farther than the whole: the page moves
      }
      event.preventDefault();
      near(Math.exp(-event.deltaY / 400), place(event));
    }, { passive: false });

    map.addEventListener("pointerdown", (event) => {
      if (event.button !== 0) {
        return;
      }
      slipped = fingers.size ? CLICK + 1 : 0;
      fingers.set(event.pointerId, event);
    });
    map.addEventListener("pointermove", (event) => {
      const before = fingers.get(event.pointerId);
      if (!before) {
        return;
      }
      slipped += Math.hypot(event.clientX - before.clientX, event.clientY - before.clientY);
      if (slipped > CLICK) {
        map.setPointerCapture(event.pointerId);
        map.classList.add("dragged");
        const was = place(before);
        const is = place(event);
        if (fingers.size === 2) {
          const other = [...fingers.values()].find((one) => one.pointerId !== event.pointerId);
          const fixed = place(other);
          const gap = Math.hypot(was.x - fixed.x, was.y - fixed.y);
          near(Math.max(0.2, Math.hypot(is.x - fixed.x, is.y - fixed.y)) / Math.max(0.2, gap), fixed);
        } else {
          look(view.x + was.x - is.x, view.y + was.y - is.y, view.w);
        }
      }
      fingers.set(event.pointerId, event);
    });
    map.addEventListener("pointerup", (event) => {
      const asked = fingers.delete(event.pointerId) && slipped <= CLICK;
      map.classList.toggle("dragged", false);
      if (asked) {
        meant(place(event));
      }
    });
    map.addEventListener("pointercancel", (event) => {
      fingers.delete(event.pointerId);
      map.classList.remove("dragged");
    });

    function begin() {
      document.querySelectorAll("[data-script]").forEach((one) => { one.hidden = false; });
      show();
    }

    document.body.addEventListener("htmx:afterSettle", () => {
      corners = null;
      begin();
    });
    document.body.addEventListener("htmx:oobAfterSwap", show);
    begin();
  }

  document.addEventListener("DOMContentLoaded", () => {
    const map = document.getElementById("map");
    if (map) {
      start(map);
    }
  });
})();

/** A page of today that stands open takes up what others write down, as long as somebody is there to look at it. */
(function () {
  const THERE = 12 * 3600 * 1000; // ms after which nobody is, who has touched nothing: our choice

  document.addEventListener("DOMContentLoaded", () => {
    const live = document.getElementById("live");
    if (!live) {
      return;
    }
    let touched = Date.now();
    const look = () => {
      if (document.visibilityState === "visible" && Date.now() - touched < THERE) {
        live.dispatchEvent(new Event("look"));
      }
    };
    ["pointerdown", "keydown", "focus"].forEach((name) =>
      window.addEventListener(name, () => { touched = Date.now(); }));
    window.addEventListener("focus", look);
    document.addEventListener("visibilitychange", look);
    setInterval(look, 1000 * Number(live.dataset.every));
  });

  /** What is as it was stays untouched, and what somebody has opened stays open. */
  document.addEventListener("htmx:oobBeforeSwap", (event) => {
    const { target, fragment } = event.detail;
    fragment.querySelectorAll("details[id]").forEach((one) => {
      const before = document.getElementById(one.id);
      one.open = before !== null && before.open;
    });
    event.detail.shouldSwap = fragment.innerHTML !== target.innerHTML;
  });
})();
